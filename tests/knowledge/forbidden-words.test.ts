import { describe, expect, it } from "vitest";
import { forbiddenPhrase } from "../../src/knowledge/forbidden-words.ts";

const find = (text: string) => forbiddenPhrase(text, ["ether", "bridge the"], ["never", "not"]);

describe("forbidden phrases", () => {
  it("counts whole words only", () => {
    expect(find("See whether both run together.")).toBeUndefined();
    expect(find("Spray ether.")).toBe("ether");
    expect(find("together with ether")).toBe("ether");
  });

  it("lets a sentence deny it, but only its own", () => {
    expect(find("Never bridge the starter.")).toBeUndefined();
    expect(find("Do not worry. Bridge the starter.")).toBe("bridge the");
    expect(find("Bridge the starter; never mind.")).toBe("bridge the");
  });
});
