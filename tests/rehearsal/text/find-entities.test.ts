import { describe, expect, it } from "vitest";
import { findEntities, overlap } from "../../../src/rehearsal/text/find-entities.ts";

/** What is found, as "type:words". */
const found = (text: string) =>
  findEntities(text).map(
    ({ type, offset, length }) => `${type}:${text.slice(offset, offset + length)}`,
  );

describe("what the server finds in a text by itself", () => {
  it.each([
    ["/start abc", ["bot_command:/start"]],
    ["/help@turnrow_bot now", ["bot_command:/help@turnrow_bot"]],
    ["first /undo then /stop", ["bot_command:/undo", "bot_command:/stop"]],
    ["12 V/6 V and 3/4", []],
    ["write to @ana_k, please", ["mention:@ana_k"]],
    ["ana@farm.example", ["email:ana@farm.example"]],
    ["see https://farm.example/a_b?x=1.", ["url:https://farm.example/a_b?x=1"]],
    ["#harvest #12", ["hashtag:#harvest"]],
    ["nothing here", []],
  ])("%s", (text, entities) => {
    expect(found(text)).toEqual(entities);
  });

  it("never overlaps", () => {
    const entities = findEntities("https://farm.example/@ana #a /b ana@farm.example");
    const pairs = entities.flatMap((left, index) =>
      entities.slice(index + 1).map((right) => overlap(left, right)),
    );
    expect(pairs).not.toContain(true);
  });
});
