import { describe, expect, it } from "vitest";
import { coreModel } from "../helpers/core-model.ts";
import { shippedReader } from "../helpers/shipped.ts";

const reader = await shippedReader(coreModel(), "es");

const flagsOf = (text: string): string[] => [
  ...new Set(reader.read(text, { languages: ["es"] }).redFlags.map(({ id }) => id)),
];

const dangers: readonly (readonly [string, string])[] = [
  ["fire-or-injury", "está ardiendo el tractor"],
  ["fire-or-injury", "salen llamas debajo del capó"],
  ["fire-or-injury", "mi hermano está herido"],
  ["fire-or-injury", "me ha saltado ácido en los ojos"],
  ["fire-or-injury", "se ha quemado la mano"],
  ["fuel-leak", "hay un charco de gasoil debajo"],
  ["fuel-leak", "cae gasolina encima del escape"],
  ["smoke-or-hot-wires", "sale humo del cuadro"],
  ["smoke-or-hot-wires", "huele a plástico quemado"],
  ["battery-damaged", "la batería está abombada"],
  ["battery-frozen", "la batería está helada"],
  ["battery-spark", "al conectar la batería pega un chispazo enorme"],
  ["lithium-cold", "la batería es de litio y estamos bajo cero"],
  ["leads-reversed", "puse las pinzas al revés"],
  ["wrong-fluid", "le eché gasolina en el depósito de gasoil"],
  ["wrong-fluid", "echaron adblue en el depósito"],
  ["water-in-engine", "sale agua por el escape"],
  ["will-not-stop", "sigue girando con la llave quitada"],
  ["interlock-bridged", "puenteamos el sensor del asiento"],
  ["raised-load", "la pala está en alto y estoy debajo"],
  ["bad-place", "está en mitad de la carretera"],
  ["ether-sprayed", "le eché espray de arranque"],
  ["alone-and-far", "estoy solo en el monte"],
  ["nest-or-chaff", "hay un nido de ratones encima del motor"],
  ["somebody-too-near", "mi hijo está debajo del tractor"],
];

const harmless = [
  "no prende",
  "prende y se apaga",
  "no huele a gasolina",
  "huele a gasolina en el escape después de darle al arranque",
  "humo blanco por el escape",
  "echa humo negro",
  "la batería está vieja",
  "ha helado esta mañana",
  "chispa floja en la bujía",
  "agua en el filtro de gasoil",
  "el clac no para",
  "el capó está levantado",
  "nadie cerca",
  "estoy al lado de la máquina",
  "¿me puede llamar alguien?",
];

describe("dangers told in Spanish", () => {
  it.each(dangers)("%s is heard in: %s", (flag, text) => {
    expect(flagsOf(text)).toContain(flag);
  });

  it.each(harmless)("no danger is heard in: %s", (text) => {
    expect(flagsOf(text)).toEqual([]);
  });
});
