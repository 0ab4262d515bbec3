import type { MachineHints } from "../domain/reading.ts";
import { type Fuel, fuels } from "../domain/vocabulary.ts";
import type { Clauses } from "./clauses.ts";
import type { GrammarWords } from "./grammar.ts";
import type { KindMatcher } from "./machine-kind.ts";
import type { Quantity } from "./quantity.ts";

/** System voltages that exist on these machines. */
const systemVolts: readonly number[] = [6, 12, 24];
/** Fewer hours than this are a length of time, not a reading of the hour meter. */
const LEAST_METER_HOURS = 50;
const HOURS_IN_YEAR = 8766;

export interface HintInput {
  readonly quantities: readonly Quantity[];
  readonly kindOf: KindMatcher;
  readonly fuel: string | null;
  /** Stems beside a nominal voltage that make it the machine's. */
  readonly nominal: NominalWords;
  /** Stems after a number of years that make it an age. */
  readonly age: ReadonlySet<string>;
}

/** Hints, and the quantities they were taken from. */
export interface Hinted {
  readonly hints: MachineHints;
  readonly used: readonly Quantity[];
}

/** What a message says of the machine itself. */
export function machineHints(text: string, clauses: Clauses, input: HintInput): Hinted {
  const kind = input.kindOf(text);
  const fuel = fuels.find((one): one is Fuel => one === input.fuel) ?? kind.fuel;
  const found = (unit: string): Quantity | undefined =>
    input.quantities.find((one) => one.unit === unit);
  const years = input.quantities.find((one) => isAge(clauses, one, input.age));
  const hours = input.quantities.find(
    (one) => one.saidUnit === "h" && one.value >= LEAST_METER_HOURS,
  );
  const volts = input.quantities.find((one) => isNominal(clauses, one, input.nominal));
  const [cylinders, horsepower] = [found("cyl"), found("hp")];
  const hints: MachineHints = {
    ...kind,
    ...(fuel === undefined ? {} : { fuel }),
    ...(volts === undefined ? {} : { volts: volts.value }),
    ...(hours === undefined ? {} : { hours: hours.value }),
    ...(years === undefined ? {} : { ageYears: Math.round(years.value / HOURS_IN_YEAR) }),
    ...(cylinders === undefined ? {} : { cylinders: cylinders.value }),
    ...(horsepower === undefined ? {} : { horsepower: horsepower.value }),
  };
  const used = [volts, hours, years, cylinders, horsepower].filter((one) => one !== undefined);
  return { hints, used };
}

export type NominalWords = Pick<GrammarWords, "nominal" | "nominalOf">;

/**
 * "a 12 volt battery", "6V system", "batería de 12 voltios": a whole nominal voltage beside what it
 * belongs to.
 */
export function isNominal(clauses: Clauses, quantity: Quantity, words: NominalWords): boolean {
  const whole = quantity.unit === "V" && !quantity.decimal && systemVolts.includes(quantity.value);
  if (!whole) return false;
  const stemAt = (at: number): string => clauses.tokens[at]?.stem ?? "";
  const leads = clauses.joined(quantity.to) && words.nominal.has(stemAt(quantity.to));
  const { from } = quantity;
  const led = words.nominalOf.has(stemAt(from - 1)) && words.nominal.has(stemAt(from - 2));
  return leads || (led && clauses.joined(from) && clauses.joined(from - 1));
}

/** "40 years old". */
function isAge(clauses: Clauses, quantity: Quantity, age: ReadonlySet<string>): boolean {
  return quantity.saidUnit === "year" && age.has(clauses.tokens[quantity.to]?.stem ?? "");
}
