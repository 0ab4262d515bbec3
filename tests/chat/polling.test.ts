import { describe, expect, it } from "vitest";
import { createPolling } from "../../src/chat/polling.ts";
import { createFakeTimers } from "../helpers/fake-timers.ts";

type Verdict = "bad-token" | "conflict" | "other";
class Refused extends Error {
  readonly verdict: Verdict;
  constructor(verdict: Verdict) {
    super(verdict);
    this.verdict = verdict;
  }
}

function polled(loop: () => Promise<void>) {
  const timers = createFakeTimers();
  const polling = createPolling({
    timers,
    loop,
    judge: (error) => (error instanceof Refused ? error.verdict : "other"),
  });
  let end: unknown = "still running";
  const run = () =>
    void polling.run().then(
      () => {
        end = "stopped";
      },
      (error) => {
        end = error instanceof Error ? error.name : error;
      },
    );
  return { timers, watch: polling.watch, run, end: () => end };
}
const forever = () => new Promise<never>(() => undefined);

describe("polling", () => {
  it("ends when its loop was stopped", async () => {
    const { run, timers, end } = polled(async () => undefined);
    run();
    await timers.settled();
    expect(end()).toBe("stopped");
  });

  it("says at once that a token is not known", async () => {
    const { run, timers, end } = polled(() => Promise.reject(new Refused("bad-token")));
    run();
    await timers.settled();
    expect(end()).toBe("BadToken");
  });

  it("passes anything else on", async () => {
    const { run, timers, end } = polled(() => Promise.reject(new RangeError()));
    run();
    await timers.settled();
    expect(end()).toBe("RangeError");
  });

  it("waits for another program to end, for a minute", async () => {
    let rounds = 0;
    const { run, timers, end } = polled(async () => {
      if (++rounds < 10) throw new Refused("conflict");
    });
    run();
    await timers.advance(60_000);
    expect(end()).toBe("stopped");
    const stubborn = polled(() => Promise.reject(new Refused("conflict")));
    stubborn.run();
    await stubborn.timers.advance(59_000);
    expect(stubborn.end()).toBe("still running");
    await stubborn.timers.advance(5_000);
    expect(stubborn.end()).toBe("TakenElsewhere");
  });

  it("counts the minute anew after it has received something", async () => {
    let rounds = 0;
    const { watch, run, end, timers } = polled(async () => {
      watch.ended(++rounds % 10 === 0 ? "updates" : "error");
      throw new Refused("conflict");
    });
    run();
    await timers.advance(10 * 60_000);
    expect(end()).toBe("still running");
  });

  it("notices a line that has gone silent", async () => {
    const { run, watch, timers, end } = polled(forever);
    run();
    watch.begun();
    await timers.advance(90_000);
    expect(end()).toBe("still running");
    await timers.advance(30_000);
    expect(end()).toBe("PollingStalled");
  });

  it("takes neither failures nor slow work between requests for silence", async () => {
    const { run, watch, timers, end } = polled(forever);
    run();
    for (let i = 0; i < 20; i++) {
      watch.begun();
      await timers.advance(60_000);
      watch.ended("error");
    }
    await timers.advance(600_000);
    expect(end()).toBe("still running");
  });
});
