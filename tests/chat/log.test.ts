import { GrammyError, HttpError } from "grammy";
import { describe, expect, it } from "vitest";
import { createLog } from "../../src/chat/log.ts";

const TOKEN = "123456789:AAabcdefghijklmnopqrstuvwxyz_-12345";
const SAID = "my phone is 555 0100";

function lines(run: (log: ReturnType<typeof createLog>) => void): string {
  const written: string[] = [];
  run(
    createLog(
      (line) => written.push(line),
      () => 0,
      ["1:made-up"],
    ),
  );
  return written.join("\n");
}

describe("the log", () => {
  it("names what happened, when, and the facts given", () => {
    const line = lines((log) => log("poll-failed", { method: "getUpdates", milliseconds: 5 }));
    expect(JSON.parse(line)).toEqual({
      at: "1970-01-01T00:00:00.000Z",
      what: "poll-failed",
      method: "getUpdates",
      milliseconds: 5,
    });
  });

  it("never holds a token or what somebody said, whatever the error carries", () => {
    const url = `https://api.telegram.org/bot${TOKEN}/sendMessage`;
    const refusal = { ok: false, error_code: 400, description: "Bad Request: no" } as const;
    const broken = new HttpError(`Network request for ${url} failed`, new Error(url));
    const bug = new TypeError(`cannot read ${SAID} of ${url}`);
    const text = lines((log) => {
      log("a", { error: new GrammyError("x", refusal, "sendMessage", { text: SAID, url }) });
      log("b", { error: broken });
      log("c", { error: bug });
      log("d", { error: Object.assign(new Error(SAID), { code: "ENOSPC", ctx: { SAID } }) });
      log("e", { error: { TOKEN, SAID } });
      log("f", { reason: `${url} and 1:made-up` });
    });
    expect(text).not.toContain(TOKEN);
    expect(text).not.toContain("AAabc");
    expect(text).not.toContain("1:made-up");
    expect(text).not.toContain("555");
    expect(text).toContain("Bad Request: no");
    expect(text).toContain("ENOSPC");
    expect(text).toContain("TypeError");
  });

  it("says where in the code it was, without the machine's folders", () => {
    const line = lines((log) => log("x", { error: new Error(SAID) }));
    expect(line).toContain("log.test.ts:");
    expect(line).not.toContain(process.cwd());
  });
});
