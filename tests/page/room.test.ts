import { type Bot, type Context, InputFile } from "grammy";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { drawSamplePhotos } from "../../src/paper/sample-photos.ts";
import { openRoom } from "../../src/rehearsal/room.ts";
import { roomScenario } from "../rehearsal/room-scenario.ts";
import { openStage, startBot } from "../rehearsal/stage.ts";
import { type Size, useBrowser } from "./browser.ts";

const browser = useBrowser();
const OPERATOR = 1001;

/** A bot that does once everything that a page has to show. */
function rehearse(bot: Bot): void {
  const question = {
    inline_keyboard: [
      [{ text: "One click", callback_data: "click" }],
      [
        { text: "Nothing at all", callback_data: "nothing" },
        { text: "I don't know", callback_data: "unknown" },
      ],
    ],
  };
  bot.command("start", async (context) => {
    await greet(context, question);
  });
  bot.on("callback_query:data", async (context) => {
    await context.answerCallbackQuery("Noted.");
    await context.editMessageText(`What happens?\nYour answer: ${context.callbackQuery.data}`);
    await context.reply("Where does the machine stand?", {
      reply_markup: {
        keyboard: [[{ text: "Share my place", request_location: true }]],
        resize_keyboard: true,
      },
    });
  });
  bot.on("message:location", (context) =>
    context.reply("I have the place.", { reply_markup: { remove_keyboard: true } }),
  );
  bot.on("message:photo", (context) =>
    context.replyWithPhoto(new InputFile(Buffer.from(picture), "seen.jpg"), { caption: "Seen." }),
  );
  bot.hears("invite", (context) =>
    context.reply("For the technician: https://t.me/rehearsal_bot?start=inv_Te5t-1."),
  );
  bot.hears("hebrew", (context) => context.reply("שלום, מה קורה כשמסובבים את המפתח?"));
  bot.on("message:text", (context) => context.reply(`You wrote: ${context.msg.text}`));
}

async function greet(context: Context, keyboard: { inline_keyboard: never[] | object[][] }) {
  const payload = context.match === "" ? "" : ` (${String(context.match)})`;
  const text = `What happens?${payload}\n<b>not markup</b> & plain\njust clicks`;
  await context.api.raw.sendMessage({
    chat_id: context.chat?.id ?? 0,
    text,
    entities: [
      { type: "bold", offset: 0, length: 13 },
      { type: "blockquote", offset: text.length - 11, length: 11 },
    ],
    reply_markup: JSON.parse(JSON.stringify(keyboard)),
  });
}

let picture: Uint8Array = new Uint8Array();

async function openedPage(size?: Size) {
  const stage = await openStage();
  const photos = await drawSamplePhotos();
  picture = photos[0]?.bytes ?? picture;
  openRoom(stage.server, { scenario: { ...roomScenario(), pictures: photos } });
  const bot = stage.bot();
  rehearse(bot);
  await startBot(bot);
  const page = await browser.open(stage.server.url, size);
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  const requests: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  await page.locator('[data-phone="technician"]').waitFor();
  return { ...stage, page, complaints, requests };
}

const phone = (page: Page, id: string) => page.locator(`[data-phone="${id}"]`);
const log = (page: Page, id: string) => phone(page, id).getByRole("log");

async function say(page: Page, id: string, text: string): Promise<void> {
  await phone(page, id).getByRole("textbox", { name: "writes" }).fill(text);
  await phone(page, id).getByRole("button", { name: "Send", exact: true }).click();
}

describe("the rehearsal room in a browser", () => {
  it("plays a chat: start, press, place, photo, each in its place", async () => {
    const { page, complaints, requests, server } = await openedPage();
    expect(await page.getByText("Rehearsal room: nothing leaves this computer.").count()).toBe(1);
    const operator = phone(page, "operator");
    await operator.getByRole("button", { name: "Start the chat" }).click();
    const entry = log(page, "operator").locator(".entry").nth(1);
    await entry.getByRole("button", { name: "One click" }).waitFor();
    expect(await entry.locator("strong").textContent()).toBe("What happens?");
    expect(await entry.locator("q").textContent()).toBe("just clicks");
    expect(await entry.getByText("<b>not markup</b> & plain").count()).toBe(1);

    await entry.getByRole("button", { name: "One click" }).click();
    await operator.getByRole("alert").getByText("Noted.").waitFor();
    await entry.getByText("Your answer: click").waitFor();
    expect(await entry.getByRole("button").count()).toBe(0);
    expect(await entry.getByText("changed").count()).toBe(1);

    await operator.getByRole("button", { name: "Share my place" }).click();
    await log(page, "operator").getByText("I have the place.").waitFor();
    await expect
      .poll(() => operator.getByRole("button", { name: "Share my place" }).count())
      .toBe(0);

    await operator.getByText("More to send").click();
    await operator.getByRole("button", { name: "Battery, green crust" }).click();
    await log(page, "operator").getByText("Seen.").waitFor();
    const widths = await log(page, "operator")
      .locator("img")
      .evaluateAll((images) => images.map((image) => Reflect.get(image, "naturalWidth")));
    expect(widths).toEqual([1280, 1280]);
    const fromEnd = () =>
      log(page, "operator").evaluate((list) =>
        Math.round(list.scrollHeight - list.scrollTop - list.clientHeight),
      );
    await expect.poll(fromEnd).toBeLessThan(2);

    expect(complaints).toEqual([]);
    expect(
      requests.filter((url) => !url.startsWith(server.url) && !url.startsWith("data:")),
    ).toEqual([]);
    await picturesOf(page, "played");
  });

  it("follows a start link on another phone, and leads nowhere else", async () => {
    const { page, server } = await openedPage();
    await say(page, "dispatcher", "invite");
    const link = log(page, "dispatcher").getByRole("button", { name: "start=inv_Te5t-1" });
    await link.click();
    await page.getByRole("dialog").getByRole("button", { name: "Technician: Tilda" }).click();
    await log(page, "technician").getByText("(inv_Te5t-1)").waitFor();
    expect(server.transcript(1003)[0]?.text).toBe("/start inv_Te5t-1");

    await phone(page, "operator").getByText("More to send").click();
    const field = phone(page, "operator").getByRole("textbox", { name: "Start link" });
    await field.fill("https://elsewhere.example/x");
    await phone(page, "operator").getByRole("button", { name: "Open", exact: true }).click();
    await page.getByText("This link leads out of the room").waitFor();
    expect(new URL(page.url()).origin).toBe(server.url);
  });

  it("can be used with the keyboard alone", async () => {
    const { page, server } = await openedPage();
    const focused = () =>
      page.evaluate(() => {
        const element = Reflect.get(globalThis, "document").activeElement;
        return [element.tagName, element.textContent.slice(0, 20)].join(" ");
      });
    await page.keyboard.press("Tab");
    expect(await focused()).toMatch(/^SELECT/);
    await phone(page, "operator").getByRole("textbox", { name: "writes" }).focus();
    await page.keyboard.type("it only");
    await page.keyboard.press("Shift+Enter");
    await page.keyboard.type("clicks");
    await page.keyboard.press("Enter");
    await log(page, "operator").getByText("You wrote: it only").waitFor();
    expect(server.transcript(OPERATOR)[0]?.text).toBe("it only\nclicks");
    expect(await focused()).toMatch(/^TEXTAREA/);

    await say(page, "operator", "/start");
    const button = log(page, "operator").getByRole("button", { name: "One click" });
    await button.focus();
    await page.keyboard.press("Enter");
    await log(page, "operator").getByText("Your answer: click").waitFor();
    // The pressed button is gone; the keyboard goes on from the log it was in.
    expect(await focused()).toMatch(/^OL/);
  });

  it("has a name for everything that can be pressed or filled, and room for a thumb", async () => {
    const { page } = await openedPage();
    await say(page, "operator", "/start");
    await log(page, "operator").getByRole("button", { name: "One click" }).waitFor();
    await phone(page, "operator").getByText("More to send").click();
    const small = await page
      .locator("button:visible, select:visible, summary:visible")
      .evaluateAll(
        (elements) =>
          elements
            .map((element) => Reflect.get(element, "getBoundingClientRect").call(element))
            .filter(({ height }) => height < 44).length,
      );
    expect(small).toBe(0);
    const nameless = await page
      .locator("button:visible, select:visible, textarea:visible, input:visible")
      .evaluateAll(
        (elements) =>
          elements.filter((element) => {
            const labels = Reflect.get(element, "labels");
            const words = Reflect.get(element, "textContent") || labels?.[0]?.textContent;
            return !words && !Reflect.get(element, "ariaLabel");
          }).length,
      );
    expect(nameless).toBe(0);
  });

  it("changes the language of one phone and shows right-to-left words from the right", async () => {
    const { page, server } = await openedPage();
    await phone(page, "operator").getByRole("combobox").selectOption("de");
    await expect
      .poll(() => server.person({ id: OPERATOR, name: "Olga" }).user.language_code)
      .toBe("de");
    await say(page, "operator", "hebrew");
    const words = log(page, "operator").getByText("שלום");
    await words.waitFor();
    const direction = await words.evaluate(
      (element) => Reflect.get(globalThis, "getComputedStyle")(element).direction,
    );
    expect(direction).toBe("rtl");
  });

  it("stands side by side on a desk and one below the other on a phone, nothing cut off", async () => {
    const { page } = await openedPage();
    await say(page, "operator", `/start`);
    await say(page, "operator", `a-very-long-word-${"x".repeat(200)}`);
    await log(page, "operator").getByText("You wrote").waitFor();
    const places = async () => {
      const boxes = await Promise.all(
        ["operator", "dispatcher", "technician"].map((id) => phone(page, id).boundingBox()),
      );
      return boxes.map((box) => ({ x: Math.round(box?.x ?? 0), y: Math.round(box?.y ?? 0) }));
    };
    const wide = await places();
    expect(new Set(wide.map(({ y }) => y)).size).toBe(1);
    expect(new Set(wide.map(({ x }) => x)).size).toBe(3);
    await page.setViewportSize({ width: 390, height: 800 });
    const narrow = await places();
    expect(new Set(narrow.map(({ x }) => x)).size).toBe(1);
    const overflow = await page.evaluate(() => {
      const root = Reflect.get(globalThis, "document").documentElement;
      return root.scrollWidth - root.clientWidth;
    });
    expect(overflow).toBe(0);
    await picturesOf(page, "narrow");
  });

  it("says when the room is gone, and goes on when it is back", async () => {
    const first = await openStage();
    openRoom(first.server, { scenario: roomScenario() });
    const { port, url } = first.server;
    const page = await browser.open(url);
    await phone(page, "technician").waitFor();
    await first.server.stop();
    await page.getByText("The room does not answer. Waiting for it").waitFor();
    const second = await openStage({ port });
    openRoom(second.server, { scenario: roomScenario() });
    await expect.poll(() => page.getByRole("status").first().textContent(), POLL).toBe("");
    await say(page, "operator", "back again");
    await log(page, "operator").getByText("back again").waitFor();
  });
});

/** A browser waits some seconds before it looks for a lost server again. */
const POLL = { timeout: 20_000 };

/** For a person to look at: the folder is named in the environment; without it none is made. */
async function picturesOf(page: Page, name: string): Promise<void> {
  const folder = process.env["PAGE_PICTURES"];
  if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png` });
}
