import type { MachineHints } from "../domain/reading.ts";
import { type Fuel, fuels } from "../domain/vocabulary.ts";
import type { Clauses } from "./clauses.ts";
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
  /** Stems after a nominal voltage that make it the machine's. */
  readonly nominal: ReadonlySet<string>;
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

/** "a 12 volt battery", "6V system": a whole nominal voltage in front of what it belongs to. */
export function isNominal(
  clauses: Clauses,
  quantity: Quantity,
  nominal: ReadonlySet<string>,
): boolean {
  const next = clauses.tokens[quantity.to];
  const whole = quantity.unit === "V" && !quantity.decimal && systemVolts.includes(quantity.value);
  return whole && next !== undefined && next.gap === "none" && nominal.has(next.stem);
}

/** "40 years old". */
function isAge(clauses: Clauses, quantity: Quantity, age: ReadonlySet<string>): boolean {
  return quantity.saidUnit === "year" && age.has(clauses.tokens[quantity.to]?.stem ?? "");
}
