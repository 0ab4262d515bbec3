import { describe, expect, it } from "vitest";
import { RateLimiter } from "../../../src/rehearsal/world/rate-limit.ts";
import { openStage, refusalOf } from "../stage.ts";

describe("the rate limiter", () => {
  // About one message a second in a chat, 20 a minute in a group: the platform's
  // questions-and-answers page for bots. The burst is ours.
  it("lets one message a second into a private chat after a short burst", () => {
    let now = 0;
    const limiter = new RateLimiter(() => now);
    limiter.on();
    for (let count = 0; count < 3; count += 1) limiter.count(7);
    expect(() => limiter.count(7)).toThrow("429 Too Many Requests: retry after 1");
    limiter.count(8);
    now = 1000;
    limiter.count(7);
    expect(() => limiter.count(7)).toThrow("retry after 1");
  });

  it("lets 20 messages a minute into a group", () => {
    let now = 0;
    const limiter = new RateLimiter(() => now);
    limiter.on();
    for (let count = 0; count < 20; count += 1) limiter.count(-1);
    expect(() => limiter.count(-1)).toThrow("retry after 3");
    now = 3000;
    limiter.count(-1);
  });

  it("an album counts as many messages", () => {
    const limiter = new RateLimiter(() => 0);
    limiter.on({ privatePerSecond: 1, privateBurst: 4, groupPerMinute: 20 });
    limiter.count(7, 10);
    expect(() => limiter.count(7)).toThrow("retry after 7");
  });
});

it("is off until it is switched on, and guards what the bot sends", async () => {
  const { server, api } = await openStage({ clock: () => 0 });
  server.person({ id: 7, name: "Ana" }).start();
  for (let count = 0; count < 10; count += 1) await api.sendMessage(7, "free");
  server.rateLimit.on({ privatePerSecond: 1, privateBurst: 1, groupPerMinute: 20 });
  await api.sendMessage(7, "one");
  expect(await refusalOf(api.sendMessage(7, "two"))).toBe("429 Too Many Requests: retry after 1");
  expect(server.transcript(7).at(-1)?.text).toBe("one");
  server.rateLimit.off();
  await api.sendMessage(7, "free again");
});
