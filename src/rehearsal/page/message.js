import { make, makeButton } from "./elements.js";

/**
 * Draws one message as an entry of the docket.
 * @param message as the room tells it
 * @param context who looks (`userId`), the bot's username, and what can be done: `press`, `open`
 */
export function drawMessage(message, context) {
  const own = message.from.id === context.userId;
  const kind = message.kind === "service" ? "remark" : own ? "own" : "others";
  return make(
    "li",
    { class: `entry ${kind}`, "data-message": message.id },
    make(
      "div",
      { class: "head" },
      make("span", { class: "who" }, own ? "You" : message.from.name),
      make("time", {}, clockTime(message.at)),
      message.editedAt === undefined ? null : make("span", {}, "changed"),
      message.isPinned ? make("span", {}, "pinned") : null,
    ),
    message.forwardedFrom ? make("div", {}, `Passed on from ${message.forwardedFrom}`) : null,
    drawContent(message),
    message.text === "" ? null : drawText(message, context),
    ...message.buttons.map((row, at) => drawRow(row, at, { message, context })),
    message.reactions.length === 0 ? null : make("div", {}, message.reactions.join(" ")),
  );
}

function clockTime(seconds) {
  const options = { hour: "2-digit", minute: "2-digit" };
  return new Date(seconds * 1000).toLocaleTimeString(undefined, options);
}

function drawContent({ kind, file, place, contact, service }) {
  if (kind === "photo" && file) {
    return make("img", {
      src: fileAddress(file),
      alt: `Photo, ${file.width} by ${file.height} pixels`,
      width: file.width,
      height: file.height,
    });
  }
  if (file) {
    return make(
      "a",
      { href: fileAddress(file), download: file.name },
      `${file.name} (${Math.max(1, Math.round(file.size / 1024))} KB)`,
    );
  }
  if (place) {
    const where = `Place: ${place.latitude.toFixed(5)}, ${place.longitude.toFixed(5)}`;
    return make("div", {}, [place.title, place.address, where].filter(Boolean).join(" · "));
  }
  if (contact) return make("div", {}, `Card: ${contact.name}, ${contact.phone}`);
  return service ? make("div", {}, service.replaceAll("_", " ")) : null;
}

function fileAddress(file) {
  return `/room/files/${encodeURIComponent(file.id)}`;
}

function drawRow(row, rowAt, { message, context }) {
  const buttons = row.map(({ label, url }, column) => {
    const act = url
      ? () => context.open(url)
      : () => context.press({ message: message.id, row: rowAt, column });
    return makeButton(label, act, { dir: "auto" });
  });
  return make("div", { class: "row" }, ...buttons);
}

const tags = { bold: "strong", italic: "em", underline: "u", blockquote: "q", strikethrough: "s" };
/** A link that starts a chat with the bot, also where it is written without its `https://`. */
const LINK = /(?:https?:\/\/)?t\.me\/[A-Za-z0-9_]+\?[^\s<>"']*[^\s<>"'.,;:!?)\]]/g;

function drawText({ text, entities }, context) {
  const marks = entities
    .filter(({ type }) => type in tags)
    .sort((a, b) => a.offset - b.offset || b.length - a.length);
  const nodes = drawStretch(text, { from: 0, to: text.length, marks, context });
  return make("div", { class: "text", dir: "auto" }, ...nodes);
}

/** Draws a stretch of the text with the marks that lie inside it. */
function drawStretch(text, { from, to, marks, context }) {
  const nodes = [];
  let at = from;
  for (const mark of marks) {
    const end = mark.offset + mark.length;
    if (mark.offset < at || end > to) continue;
    const inside = marks.filter(
      (other) =>
        other !== mark && other.offset >= mark.offset && other.offset + other.length <= end,
    );
    const within = inside.filter((other) => other.length < mark.length || other.type > mark.type);
    nodes.push(...drawLinks(text.slice(at, mark.offset), context));
    const children = drawStretch(text, { from: mark.offset, to: end, marks: within, context });
    nodes.push(make(tags[mark.type], {}, ...children));
    at = end;
  }
  nodes.push(...drawLinks(text.slice(at, to), context));
  return nodes;
}

function drawLinks(text, context) {
  const nodes = [];
  let at = 0;
  for (const match of text.matchAll(LINK)) {
    const [link] = match;
    nodes.push(text.slice(at, match.index));
    nodes.push(makeButton(link, () => context.open(link), { class: "link" }));
    at = match.index + link.length;
  }
  nodes.push(text.slice(at));
  return nodes.filter((node) => node !== "");
}
