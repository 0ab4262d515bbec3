import type { ReadingRange } from "../domain/joint-likelihood.ts";

/** What `rank` prints of one case, ids with the words beside them. */
export interface Ranked {
  readonly id: string;
  readonly machineKind: string;
  readonly causes: readonly {
    readonly id: string;
    readonly group: string;
    readonly name: string;
    readonly probability: number;
    readonly reasons: readonly {
      readonly observation: string;
      readonly state: string;
      readonly decibans: number;
    }[];
  }[];
  readonly somethingElse: number;
  readonly nothingWrong: number;
  readonly next: { readonly check: string; readonly text: string; readonly decides: string } | null;
  readonly plan: {
    readonly steps: readonly {
      readonly id: string;
      readonly kind: string;
      readonly text: string;
      readonly who: string;
      readonly minutes: number;
      readonly tools: readonly string[];
      readonly cautions: readonly string[];
      readonly then: readonly { readonly result: string; readonly next: string | null }[];
    }[];
    readonly minutes: { readonly median: number; readonly p90: number };
    readonly expectedCost: number;
  };
  readonly kit: readonly {
    readonly part: string;
    readonly name: string;
    readonly chance: number;
    readonly carry: boolean;
  }[];
  readonly kitCovers: number;
  readonly cautions: readonly string[];
  readonly redFlags: readonly { readonly id: string; readonly text: string }[];
  readonly notUnderstood: readonly string[];
  /** Causes that nothing told so far tells apart, and the check that would; null: none alike. */
  readonly lookAlike: {
    readonly causes: readonly string[];
    readonly separatedBy: { readonly check: string; readonly text: string } | null;
  } | null;
  /**
   * What was measured beside what a healthy machine and the leading causes show, each by the
   * simulated machines that fit all the other answers; empty where no circuit is simulated.
   */
  readonly readings: readonly {
    readonly observation: string;
    readonly name: string;
    readonly measured: number;
    readonly unit: string;
    readonly healthy: ReadingRange;
    readonly causes: readonly { readonly id: string; readonly expected: ReadingRange }[];
  }[];
  /** Readings that go with no machine that shows the other readings. */
  readonly unexplained: readonly {
    readonly observation: string;
    readonly name: string;
    readonly value: number;
    readonly unit: string;
  }[];
}
