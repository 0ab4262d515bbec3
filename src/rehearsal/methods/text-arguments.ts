import { badRequest } from "../refusal.ts";
import type { FormattedText } from "../text/entities.ts";
import { formatText, type RawText } from "../text/formatted-text.ts";
import { isRecord } from "../wire/params.ts";
import type { Body } from "../world/messages.ts";
import type { Call } from "./call.ts";

/** Reads `text`, `parse_mode` and `entities`. @throws ApiRefusal 400 */
export function textBody(call: Call): Body {
  const text = call.params.text("text");
  if (text === "") throw badRequest("message text is empty");
  const raw = {
    text,
    parseMode: call.params.text("parse_mode"),
    entities: marks(call, "entities"),
  };
  const formatted = formatText(raw, {
    maxChars: call.world.limits.textChars,
    tooLong: "message is too long",
    mayBeEmpty: false,
  });
  return { ...textFields(formatted), ...linkPreview(call) };
}

function textFields({ text, entities }: FormattedText): Body {
  return entities.length === 0 ? { text } : { text, entities };
}

/** Only the choice to show no preview is kept. */
function linkPreview({ params }: Call): Body {
  let options: unknown;
  try {
    options = params.json("link_preview_options");
  } catch {
    throw badRequest("can't parse link preview options JSON object");
  }
  const isOff =
    params.flag("disable_web_page_preview") ||
    (isRecord(options) && options["is_disabled"] === true);
  return isOff ? { link_preview_options: { is_disabled: true } } : {};
}

/** The real server takes entities it cannot parse as JSON for none. */
function marks({ params }: Call, name: string): unknown {
  try {
    return params.json(name);
  } catch {
    return undefined;
  }
}

/** Reads `caption`, `parse_mode` and `caption_entities`. @throws ApiRefusal 400 */
export function captionBody(call: Call): Body {
  const { params } = call;
  return captionFields(call, {
    text: params.text("caption"),
    parseMode: params.text("parse_mode"),
    entities: marks(call, "caption_entities"),
  });
}

/** The same for a caption that stands inside another argument. */
export function captionFields({ world }: Call, raw: RawText): Body {
  const { text, entities } = formatText(raw, {
    maxChars: world.limits.captionChars,
    tooLong: "message caption is too long",
    mayBeEmpty: true,
  });
  if (text === "") return {};
  return entities.length === 0 ? { caption: text } : { caption: text, caption_entities: entities };
}
