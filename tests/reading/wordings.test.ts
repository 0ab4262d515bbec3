import { describe, expect, it } from "vitest";
import { leavesOpen, says } from "../helpers/english-reader.ts";

/** How people say it, as mechanics collect it: each wording must be understood as the state. */
const wordings: Readonly<Record<string, readonly string[]>> = {
  "on-start=nothing": [
    "dead",
    "stone dead",
    "nothing",
    "zip",
    "zippo",
    "nada",
    "silence",
    "not a peep",
    "not a click",
    "no response",
    "no power",
    "no juice",
    "crickets",
    "no sign of life",
  ],
  "on-start=one-click": ["click", "clunk", "tick", "thunk", "clack", "a single click"],
  "on-start=fast-clicks": [
    "click click click",
    "clicking away",
    "chatter",
    "machine gun",
    "rapid fire",
    "buzz",
    "rattling",
  ],
  "on-start=slow": [
    "sluggish",
    "drags",
    "lazy",
    "groans",
    "grunts",
    "it struggles",
    "barely turns",
    "no oomph",
  ],
  "on-start=turns-then-stops": ["half a turn"],
  "engine-turns=no": ["locked up", "seized", "engine is stuck", "engine is frozen", "motor solid"],
  "on-start=spins-alone": [
    "whirr",
    "whizzes",
    "free-spins",
    "starter whines",
    "humming",
    "won't mesh",
    "bendix doesn't engage",
  ],
  "engine-turns=normal": ["rolls over", "churns"],
  "on-start=turns-no-fire": ["won't fire", "won't hit", "not a lick", "no joy"],
  "on-start=runs-only-while-held": ["dies when I let go"],
  "how-stopped=faded": ["it sputters", "fades"],
  "pattern=sometimes": [
    "off and on",
    "when it wants to",
    "finicky",
    "if I wiggle it",
    "jiggle it",
    "there's a sweet spot",
    "goes at the second try",
    "gremlin",
  ],
  "recent-event=jump-started": ["gave it a jump", "a boost", "slaved it off the truck"],
  "recent-event=charged": ["put the charger on"],
  "recent-event=ran-dry": ["ran out of fuel", "ran dry"],
  "water-or-wax=wax": ["gelled", "like jello", "slush in the filter"],
  "water-or-wax=water": ["water in the bowl", "rust in the tank", "diesel bug"],
  "flooding-signs=smell": ["reeks of petrol", "flooded"],
  "joint-look=corroded": ["terminals corroded", "the clamp is furry", "earth strap is rusty"],
  "pattern=only-cold": ["it starts only when it is warm", "below freezing it will not start"],
  "jump-start=cured": ["jumped it off the truck and it took right off"],
};

describe("wordings of the trade", () => {
  const pairs = Object.entries(wordings).flatMap(([state, texts]) =>
    texts.map((text) => [text, state] as const),
  );
  it.each(pairs)("%s → %s", (text, state) => expect(says(text)).toContain(state));

  it.each(["turns over", "kick over", "crank", "goes dead", "won't hold a charge", "old petrol"])(
    "%s is asked about",
    (text) => {
      expect(says(text)).toEqual([]);
      expect(leavesOpen(text).length).toBeGreaterThan(1);
    },
  );
});
