// Covers also: src/rehearsal/people/membership.ts
import { beforeEach, describe, expect, it } from "vitest";
import { openStage, type Stage } from "../stage.ts";

let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
});

const ana = () => stage.server.person({ id: 7, name: "Ana", lastName: "B", username: "ana_b" });

describe("a person", () => {
  it("is known by id, name, user name and language", async () => {
    ana().start();
    stage.server.person({ id: 8, name: "Ben", language: "pt-BR" }).start();
    const updates = await stage.api.getUpdates();
    expect(updates.map(({ message }) => message?.from)).toEqual([
      { id: 7, is_bot: false, first_name: "Ana", last_name: "B", username: "ana_b" },
      { id: 8, is_bot: false, first_name: "Ben", language_code: "pt-BR" },
    ]);
    expect(stage.server.person({ id: 7, name: "Somebody else" })).toBe(ana());
  });

  it.each([0, -3, 1.5, 1])("cannot have the id %d", (id) => {
    expect(() => stage.server.person({ id, name: "X" })).toThrow("A person's id is a whole number");
  });

  // Bot API documentation, "Deep linking": up to 64 of A-Z a-z 0-9 _ -.
  it("comes by a link with a payload", async () => {
    expect(ana().start("case_12-Ab").text).toBe("/start case_12-Ab");
    const [update] = await stage.api.getUpdates();
    expect(update?.message).toMatchObject({
      text: "/start case_12-Ab",
      entities: [{ type: "bot_command", offset: 0, length: 6 }],
    });
    for (const payload of ["", "a b", "ä", "x".repeat(65)]) {
      expect(() => ana().start(payload)).toThrow("A start payload is 1 to 64");
    }
  });

  it("may block the bot, which is told, and come back", async () => {
    expect(() => ana().block()).toThrow("Ana never pressed Start.");
    ana().start();
    ana().block();
    ana().block();
    expect(() => ana().say("x")).toThrow(
      "Ana has blocked the bot; call unblock() or start() first.",
    );
    ana().start("again");
    const updates = await stage.api.getUpdates();
    expect(
      updates.map(
        ({ message, my_chat_member: change }) => message?.text ?? change?.new_chat_member.status,
      ),
    ).toEqual(["/start", "kicked", "member", "/start again"]);
    expect(updates[1]?.my_chat_member).toMatchObject({
      chat: { id: 7, type: "private" },
      from: { id: 7 },
      old_chat_member: { status: "member", user: { id: 1, is_bot: true } },
    });
  });

  it("may delete the account", () => {
    ana().start();
    ana().deleteAccount();
    expect(() => ana().say("x")).toThrow("Ana has deleted the account.");
  });
});
