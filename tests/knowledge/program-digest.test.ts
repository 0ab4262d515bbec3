import { describe, expect, it } from "vitest";
import { codeForm, programDigest } from "../../src/knowledge/program-digest.ts";

describe("what stands for the code that understands texts", () => {
  it("is the same as long as the code is", () => {
    expect(programDigest()).toBe(programDigest());
    expect(programDigest()).toMatch(/^[0-9a-f]{64}$/);
  });
  it("knows that the tests run the code as it is written", () => expect(codeForm).toBe("ts"));
});
