import { describe, expect, it } from "vitest";
import type { Asking } from "../../src/domain/case-events.ts";
import { choicesFor, DONT_KNOW, LEADS_TO } from "../../src/talk/choices.ts";
import { Dialog, speech, workshop } from "../helpers/dialog.ts";

const { knowledge } = workshop;
const { state } = new Dialog();
const choices = (asking: Asking) => choicesFor(asking, state, knowledge);

/** Every list of answers that a check can show, by following menus and pages. */
function screens(check: string): Asking[] {
  const found: Asking[] = [];
  const open: Asking[] = [{ about: "check", check }];
  while (open.length > 0) {
    const asking = open.pop();
    if (asking === undefined) break;
    found.push(asking);
    for (const { value } of choices(asking)) {
      if (value.startsWith(LEADS_TO)) {
        open.push({ about: "check", check, menu: value.slice(LEADS_TO.length) });
      }
    }
  }
  return found;
}

describe("answers on a screen", () => {
  it.each([...knowledge.checks.keys()])("are at most six, with words, for %s", (check) => {
    for (const asking of screens(check)) {
      const shown = choices(asking);
      expect(shown.length).toBeLessThanOrEqual(6);
      for (const { label } of shown) {
        const text = speech.wording.phrase(label, "en");
        expect(text.length).toBeGreaterThan(0);
        expect(text).not.toMatch(/^(state|menu|answer)-/);
      }
      expect(new Set(shown.map((one) => one.value)).size).toBe(shown.length);
    }
  });

  it("reach every state of every observation that is chosen from a list", () => {
    for (const check of knowledge.checks.values()) {
      const observation = knowledge.observations.get(check.yields);
      if (
        observation === undefined ||
        observation.kind === "number" ||
        observation.kind === "text"
      ) {
        continue;
      }
      const reached = new Set(
        screens(check.id).flatMap((asking) => choices(asking).map((choice) => choice.state)),
      );
      const wanted =
        check.menu.length > 0
          ? check.menu.flatMap((head) => head.states)
          : observation.states.map((one) => one.id);
      expect(
        wanted.filter((one) => !reached.has(one)),
        check.id,
      ).toEqual([]);
    }
  });

  it("reach every kind of machine", () => {
    const kinds = new Set<string>();
    const walk = (asking: Asking) => {
      for (const { value } of choices(asking)) {
        if (value.startsWith(LEADS_TO)) walk({ about: "kind", family: value.slice(1) });
        else if (value !== DONT_KNOW) kinds.add(value);
      }
    };
    walk({ about: "kind" });
    expect([...kinds].sort()).toEqual([...knowledge.machines.keys()].sort());
  });
});
