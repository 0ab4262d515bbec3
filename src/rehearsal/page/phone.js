import { make, makeButton, send as sendWish } from "./elements.js";
import { drawMessage } from "./message.js";

/** Milliseconds for which a short answer to a press stays on the sheet. */
const TOAST_MILLISECONDS = 6000;
/** Somebody who has scrolled up further than this, in px, is reading and is left there. */
const NEAR_END = 120;

/**
 * Makes a phone: its element, and what brings it up to date.
 * @param phone who it belongs to · @param room the scenario · @param open follows a link
 */
export function makePhone(phone, room, open) {
  const id = `phone-${phone.id}`;
  const log = make("ol", {
    class: "log",
    role: "log",
    tabindex: "0",
    "aria-label": `Messages on the phone of ${phone.name}`,
  });
  const follow = keepAtEnd(log);
  const busy = make("p", { class: "said", role: "status" });
  const toast = make("p", { class: "toast", role: "alert", hidden: true });
  const keys = make("div", { class: "keys", role: "group", "aria-label": "Quick replies" });
  const language = drawLanguage(phone, room, (tag) => act("language", { tag }));
  const commands = make("div", { class: "choices" });
  const start = makeButton("Start the chat", () => act("start"));

  const act = async (name, wish) => {
    const problem = await sendWish(`/room/phones/${phone.id}/${name}`, wish);
    if (problem !== "") showToast(problem);
  };
  let timer;
  function showToast(text) {
    clearTimeout(timer);
    toast.textContent = text;
    toast.hidden = false;
    timer = setTimeout(() => {
      toast.hidden = true;
    }, TOAST_MILLISECONDS);
  }

  const context = { userId: phone.userId, press: (wish) => act("press", wish), open };
  const drawn = new Map();
  /** What was said before this page was opened is not said again. */
  let toastsSeen;
  function update({ chat, language: tag, commands: list }) {
    drawMessages(log, chat.messages, { drawn, context });
    follow();
    start.hidden = chat.messages.length > 0;
    busy.textContent = chat.action === "" ? "" : `${room.bot.name} is busy …`;
    keys.replaceChildren(...chat.keyboard.map((row) => drawKeys(row, act)));
    language.value = tag;
    commands.replaceChildren(...list.map((command) => drawCommand(command, act)));
    const news = chat.toasts.slice(toastsSeen ?? chat.toasts.length);
    toastsSeen = chat.toasts.length;
    if (news.length > 0) showToast(news.at(-1).text);
  }

  const element = make(
    "section",
    { class: "phone", "aria-labelledby": id, "data-phone": phone.id },
    make(
      "header",
      {},
      make("h2", { id }, `${phone.role}: ${phone.name}`),
      make("label", { class: "language" }, "Language", language),
      make("p", { class: "about" }, phone.about),
    ),
    log,
    busy,
    toast,
    make("div", { class: "keys" }, start),
    keys,
    drawWriting(phone, (text) => act("say", { text })),
    drawMore(phone, room, { act, commands, open }),
  );
  return { element, update };
}

/**
 * Keeps the end of the log in sight, unless somebody has scrolled up.
 * @returns a function to call after the log has grown
 */
function keepAtEnd(log) {
  let atEnd = true;
  const follow = () => {
    if (atEnd) log.scrollTop = log.scrollHeight;
  };
  let top = 0;
  log.addEventListener("scroll", () => {
    // The log grows while it scrolls; only a way upwards is somebody's wish to read.
    const isNear = log.scrollHeight - log.scrollTop - log.clientHeight < NEAR_END;
    if (isNear) atEnd = true;
    else if (log.scrollTop < top) atEnd = false;
    top = log.scrollTop;
  });
  log.addEventListener("load", follow, true);
  new ResizeObserver(follow).observe(log);
  return follow;
}

/** Changes only what has changed, so that the finger and the screen reader stay where they are. */
function drawMessages(log, messages, { drawn, context }) {
  const there = new Set(messages.map(({ id }) => id));
  for (const [id, { node }] of drawn) {
    if (there.has(id)) continue;
    node.remove();
    drawn.delete(id);
  }
  for (const [index, message] of messages.entries()) {
    const look = JSON.stringify(message);
    const old = drawn.get(message.id);
    if (old?.look === look) continue;
    const node = drawMessage(message, context);
    const hadFocus = old?.node.contains(document.activeElement);
    if (old) old.node.replaceWith(node);
    else log.insertBefore(node, log.children[index] ?? null);
    drawn.set(message.id, { look, node });
    // The pressed button is gone with the old look; the keyboard goes on from the log.
    if (hadFocus) log.focus({ preventScroll: true });
  }
}

function drawLanguage(phone, room, choose) {
  const options = room.languages.map(({ tag, name }) => make("option", { value: tag }, name));
  return make(
    "select",
    {
      "aria-label": `Language of the phone of ${phone.name}`,
      onchange: (event) => choose(event.target.value),
    },
    ...options,
  );
}

function drawKeys(row, act) {
  const buttons = row.map((label) =>
    makeButton(label, () => act("key", { label }), { dir: "auto" }),
  );
  return make("div", { class: "row" }, ...buttons);
}

function drawCommand({ command, description }, act) {
  return makeButton(`/${command}: ${description}`, () => act("say", { text: `/${command}` }));
}

function drawWriting(phone, say) {
  const id = `say-${phone.id}`;
  const field = make("textarea", { id, rows: "1", dir: "auto", autocomplete: "off" });
  const submit = async (event) => {
    event.preventDefault();
    const text = field.value;
    if (text.trim() === "") return;
    field.value = "";
    await say(text);
    field.focus();
  };
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && !event.shiftKey && !event.isComposing) {
      event.preventDefault();
      field.form.requestSubmit();
    }
  });
  return make(
    "form",
    { class: "say", onsubmit: submit },
    make("label", { for: id }, `${phone.name} writes`),
    field,
    make("button", { type: "submit" }, "Send"),
  );
}

/** What is chosen here is sent, and the sheet closes, so that the answer can be seen. */
function drawMore(phone, room, { act, commands, open }) {
  const send = async (name, wish) => {
    sheet.open = false;
    await act(name, wish);
  };
  const lines = phone.lines.map((text) => makeButton(text, () => send("say", { text })));
  const pictures = room.pictures.map(({ id, title }) => {
    const image = make("img", { src: `/room/pictures/${encodeURIComponent(id)}`, alt: "" });
    const label = make("span", {}, image, title);
    return makeButton(label, () => send("picture", { picture: id }), { class: "picture" });
  });
  const own = make("input", {
    type: "file",
    accept: "image/jpeg,image/png,image/webp",
    onchange: async (event) => {
      const [file] = event.target.files;
      event.target.value = "";
      if (file) await send("photo", file);
    },
  });
  const sheet = make(
    "details",
    { class: "more" },
    make("summary", {}, "More to send"),
    make(
      "div",
      { class: "inside" },
      ...group("Things to say", lines),
      ...group("Place and number", [
        makeButton("Share the place", () => send("place")),
        makeButton("Share the phone number", () => send("number")),
      ]),
      ...group("Photos", [...pictures, make("label", {}, "A picture of your own ", own)]),
      make("h3", {}, "Commands"),
      commands,
      ...group("A start link", [drawLinkField(phone, open)]),
    ),
  );
  return sheet;
}

function group(title, children) {
  if (children.length === 0) return [];
  return [make("h3", {}, title), make("div", { class: "choices" }, ...children)];
}

function drawLinkField(phone, open) {
  const field = make("input", {
    type: "text",
    "aria-label": `Start link for the phone of ${phone.name}`,
    placeholder: "t.me/…?start=…",
  });
  return make(
    "span",
    {},
    field,
    makeButton("Open", () => open(field.value.trim(), phone)),
  );
}
