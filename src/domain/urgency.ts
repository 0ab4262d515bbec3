import type { MachineKindId } from "./vocabulary.ts";

/** What the rules of urgency may look at. */
export interface UrgencyFacts {
  /** What the caller said; null where nothing was said. */
  readonly stated: "low" | "normal" | "high" | null;
  readonly kind: MachineKindId;
  /** 1 to 12, at the machine. */
  readonly month: number;
  /** Red flags raised. */
  readonly flags: readonly string[];
  /** True where the same trouble came back after the shop's own work. */
  readonly comeback: boolean;
  /** Hours since the call came in. */
  readonly waitedHours: number;
}

/** How urgent a call is by the shop's rules, with each rule that held and its points. */
export interface Urgency {
  readonly level: "low" | "normal" | "high";
  readonly points: number;
  /** The rules that held, those with most points first. */
  readonly reasons: readonly { readonly rule: string; readonly points: number }[];
  /** Hours of waiting at which the next rule about waiting begins to hold; none: Infinity. */
  readonly untilHours: number;
}
