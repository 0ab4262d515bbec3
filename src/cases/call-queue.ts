import type { Moment } from "../talk/urgency.ts";
import { pressing } from "./case-lists.ts";
import type { CaseSummary } from "./case-summary.ts";
import type { Directory } from "./directory.ts";
import type { UrgencyNow } from "./urgency-now.ts";

/** What the order needs of a call, kept apart from all that a case is: thousands are compared. */
interface Place {
  readonly id: string;
  readonly score: number;
  readonly openedAt: number;
  /** When its urgency is to be reckoned anew, milliseconds since 1970 UTC. */
  readonly until: number;
}

const before = (a: Place, b: Place): number =>
  b.score - a.score || a.openedAt - b.openedAt || (a.id < b.id ? -1 : Number(a.id > b.id));

/** Where a place belongs in a list that is in order. */
function indexFor(list: readonly Place[], place: Place): number {
  let [from, to] = [0, list.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    const other = list[middle];
    if (other !== undefined && before(other, place) < 0) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** More newcomers than this are sorted with all the rest, not put in one by one. */
const ONE_BY_ONE = 100;

/** The open calls that the shop knows of, in the order in which they press at a moment. */
export interface CallQueue {
  count(moment: Moment): number;
  /** @param from the first one wanted, 0 for the most pressing */
  slice(moment: Moment, from: number, length: number): readonly CaseSummary[];
}

/**
 * Keeps the calls in order from one look to the next: a look moves only the calls in which
 * something happened and those that have waited so long that a rule says otherwise.
 */
export function createCallQueue(directory: Directory, urgencyNow: UrgencyNow): CallQueue {
  let places: readonly Place[] = [];
  let lookedAt: Moment | null = null;
  const touched = new Set<string>();
  directory.onCase((id) => void touched.add(id));

  function placeOf(one: CaseSummary, moment: Moment): Place {
    const { level, until } = urgencyNow(one, moment);
    return { id: one.id, score: pressing(one, level), openedAt: one.openedAt, until };
  }

  function bringUpToDate(moment: Moment): void {
    const isAnew = lookedAt === null || lookedAt.month !== moment.month;
    const isEarlier = lookedAt !== null && lookedAt.now > moment.now;
    const mustMove = (one: Place) => touched.has(one.id) || one.until <= moment.now;
    const staying = isAnew || isEarlier ? [] : places.filter((one) => !mustMove(one));
    const moving =
      isAnew || isEarlier
        ? directory.cases({ open: true })
        : [...new Set([...touched, ...places.filter(mustMove).map(({ id }) => id)])].flatMap(
            (id) => directory.case(id) ?? [],
          );
    const added = moving
      .filter((one) => one.closed === null && one.shopTold)
      .map((one) => placeOf(one, moment));
    if (added.length > ONE_BY_ONE) places = [...staying, ...added].sort(before);
    else {
      for (const one of added) staying.splice(indexFor(staying, one), 0, one);
      places = staying;
    }
    touched.clear();
    lookedAt = moment;
  }

  return {
    count(moment) {
      bringUpToDate(moment);
      return places.length;
    },
    slice(moment, from, length) {
      bringUpToDate(moment);
      return places.slice(from, from + length).flatMap(({ id }) => directory.case(id) ?? []);
    },
  };
}
