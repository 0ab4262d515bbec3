import { describe, expect, it } from "vitest";
import { openOffice } from "../helpers/office-desk.ts";

const [DISPATCHER, TECHNICIAN, OPERATOR, NEIGHBOUR] = ["2", "3", "9", "8"];

async function printed() {
  const office = await openOffice();
  await office.say(OPERATOR, "petrol garden tractor, one click, lights stay bright");
  const id = office.directory.cases({})[0]?.id ?? "";
  await office.pressIn(DISPATCHER, id, "sticker");
  const code = office.directory.shop()?.stickers?.[0]?.code ?? "";
  return { office, id, code };
}

describe("the code on a machine", () => {
  it("comes as a page to print, and is the same one the next time", async () => {
    const { office, id, code } = await printed();
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("Print this");
    await office.pressIn(DISPATCHER, id, "sticker");
    expect(office.directory.shop()?.stickers).toHaveLength(1);
    expect(office.directory.shop()?.stickers?.[0]?.code).toBe(code);
    // Bot API, deep linking: at most 64 characters of A-Z, a-z, 0-9, _ and -.
    expect(`m-${code}`).toMatch(/^[\w-]{3,64}$/);
  });

  it("lets anybody report that machine without being asked what it is", async () => {
    const { office, id, code } = await printed();
    await office.command(NEIGHBOUR, "start", `m-${code}`);
    const [own] = office.directory.cases({ operator: NEIGHBOUR });
    expect(own?.machine).toMatchObject({ kind: "garden-tractor", fuel: "petrol" });
    const state = await office.state(own?.id ?? "");
    expect(state.profile).toBe(id);
    expect(state.open.operator?.asking.about).toBe("safety");
  });

  it("scanned twice goes on with the same case", async () => {
    const { office, code } = await printed();
    await office.command(NEIGHBOUR, "start", `m-${code}`);
    await office.command(NEIGHBOUR, "start", `m-${code}`);
    expect(office.directory.cases({ operator: NEIGHBOUR })).toHaveLength(1);
  });

  it("opens nothing where it was guessed", async () => {
    const { office } = await printed();
    await office.command(NEIGHBOUR, "start", "m-guessed");
    expect(office.directory.cases({ operator: NEIGHBOUR })).toEqual([]);
    expect((await office.heard(NEIGHBOUR)).at(-1)).toContain("used up");
  });

  it("is made by the counter only, once the kind of machine is known", async () => {
    const office = await openOffice();
    await office.say(OPERATOR, "it only clicks");
    const id = office.directory.cases({})[0]?.id ?? "";
    await office.pressIn(TECHNICIAN, id, "sticker");
    const early = await office.pressIn(DISPATCHER, id, "sticker");
    expect(early.toast).toEqual({ key: "sticker-too-early" });
    expect(office.directory.shop()?.stickers).toBeUndefined();
  });
});
