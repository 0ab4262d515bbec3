import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createPressCodec } from "../../src/chat/press-codec.ts";
import type { Press } from "../../src/domain/effects.ts";

const id = fc.stringMatching(/^[a-z][a-z0-9-]{0,40}$/);
const press: fc.Arbitrary<Press> = fc.record(
  {
    case: fc.stringMatching(/^[A-Z0-9-]{1,8}$/),
    revision: fc.integer({ min: 0, max: 99_999 }),
    act: fc.stringMatching(/^[a-z-]{1,12}$/),
    value: fc.oneof(
      fc.constantFrom("?", "-", ">families", "12.4 V", "~", "a~bcdefgh", "", "ä.ö"),
      fc.stringMatching(/^[a-z]{1,12}$/),
    ),
  },
  { requiredKeys: ["revision", "act"] },
);

describe("a button's data", () => {
  const codec = createPressCodec("the shop's secret");

  it("comes back as it was meant, in at most 64 bytes", () =>
    fc.assert(
      fc.property(press, (meant) => {
        const data = codec.encode(meant);
        expect(Buffer.byteLength(data ?? "x".repeat(99))).toBeLessThanOrEqual(64);
        expect(codec.decode(data ?? "")).toEqual(meant);
      }),
      { seed: 1, numRuns: 500 },
    ));

  it("fits with the longest ids when these are known words", () =>
    fc.assert(
      fc.property(id, id, (observation, state) => {
        const knowing = createPressCodec("s", [observation, state]);
        const meant = {
          case: "K7-4F-9Q",
          revision: 99_999,
          act: "measured-one",
          value: `${observation}:${state}`,
        };
        const data = knowing.encode(meant) ?? "";
        expect(Buffer.byteLength(data)).toBeLessThanOrEqual(64);
        expect(knowing.decode(data)).toEqual(meant);
      }),
      { seed: 1, numRuns: 500 },
    ));

  it("is refused where it cannot fit, instead of being cut", () => {
    expect(codec.encode({ revision: 1, act: "say", value: "x".repeat(60) })).toBeNull();
    expect(codec.encode({ revision: 1, act: "ä" })).toBeNull();
  });

  it("is not believed when anything about it was changed", () =>
    fc.assert(
      fc.property(press, fc.nat(), fc.integer({ min: 1, max: 127 }), (meant, where, mask) => {
        const bytes = Buffer.from(codec.encode(meant) ?? "");
        const at = where % bytes.length;
        bytes[at] = (bytes[at] ?? 0) ^ mask;
        expect(codec.decode(bytes.toString("latin1"))).toBeNull();
      }),
      { seed: 1, numRuns: 500 },
    ));

  it.each(["", "x", "a".repeat(64), "AAAAAAAA1.A1.answer.yes", "😀😀😀😀1..x", "\n".repeat(9)])(
    "is not believed when it is made up: %j",
    (data) => expect(codec.decode(data)).toBeNull(),
  );

  it("is not believed by another installation", () => {
    const other = createPressCodec("another secret");
    expect(other.decode(codec.encode({ revision: 1, act: "seen" }) ?? "")).toBeNull();
  });

  it("is no longer understood, but does no harm, when a word is gone after an update", () => {
    const word = "hydraulic-lock-by-injector-leaking-overnight";
    const value = `${word}:${word}`;
    const data = createPressCodec("s", [word]).encode({ revision: 1, act: "cause", value });
    expect(data).not.toBeNull();
    expect(createPressCodec("s").decode(data ?? "")?.value).not.toBe(value);
  });
});
