import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { z } from "zod";
import type { ToldByOperator } from "../../src/commands/told-operator.ts";
import { createCalls } from "../../src/commands/whole-call.ts";
import { speech, workshop } from "./dialog.ts";

const Told = z.looseObject({
  machine: z
    .looseObject({ kind: z.string().default(""), fuel: z.string().default("") })
    .default({ kind: "", fuel: "" }),
  opening: z.string(),
  operator: z.record(z.string(), z.unknown()).default({}),
  acts: z.record(z.string(), z.string()).default({}),
});

const wordOf = (value: unknown): string => (typeof value === "string" ? value : "");

/** What the operator of one of our own calls knows, standing beside the machine. */
export function toldCall(name: string): ToldByOperator {
  const text = readFileSync(join("tests/golden", name, "call.yaml"), "utf8");
  const { machine, opening, operator, acts } = Told.parse(parse(text));
  const { kind = "other" } = workshop.reader.read(machine.kind, { languages: ["en"] }).machine;
  const known: Record<string, unknown> = { "at-machine": "yes", ...operator };
  return {
    ...{ kind, fuel: machine.fuel, opening, story: "" },
    told: (observation) => wordOf(known[observation]),
    came: (act) => acts[act] ?? "",
  };
}

/** Plays a whole call in English. */
export const playWhole = createCalls({ workshop, speech, language: "en" });
