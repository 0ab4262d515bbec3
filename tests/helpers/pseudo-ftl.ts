import {
  FluentParser,
  FluentSerializer,
  Identifier,
  Message,
  type Pattern,
  Pattern as PatternNode,
  Placeable,
  StringLiteral,
  TextElement,
} from "@fluent/syntax";
import { readLocaleFile, textDigest } from "../../src/knowledge/locale-entries.ts";
import { pseudoText, type Strangeness } from "../../src/wording/pseudo-locale.ts";

const HEAD = "# reviewed: nobody yet\n\n";

/** Turns English messages into those of a made-up language, in order for the check of locales. */
export function pseudoMessages(english: string, strangeness: Strangeness = {}): string {
  const marks = new Map(
    readLocaleFile("chat.ftl", english).entries.map(({ key, digest }) => [key, digest]),
  );
  const resource = new FluentParser().parse(english);
  const entries = resource.body.flatMap((entry) => {
    if (entry.type !== "Message" && entry.type !== "Term") return [];
    entry.comment = null;
    if (entry.value !== null) makeStrange(entry.value, strangeness);
    const key = entry.type === "Term" ? `-${entry.id.name}` : entry.id.name;
    return [`# en: ${marks.get(key)}\n${new FluentSerializer().serializeEntry(entry)}`];
  });
  return HEAD + entries.join("\n");
}

/** Turns English words of the knowledge into a `knowledge.ftl` of a made-up language. */
export function pseudoWords(
  english: ReadonlyMap<string, string>,
  strangeness: Strangeness = {},
): string {
  const serializer = new FluentSerializer();
  const entries = [...english].map(([key, text]) => {
    const message = new Message(new Identifier(key), plainPattern(pseudoText(text, strangeness)));
    return `# en: ${textDigest(text)}\n${serializer.serializeEntry(message)}`;
  });
  return HEAD + entries.join("\n");
}

function makeStrange(pattern: Pattern, strangeness: Strangeness): void {
  for (const element of pattern.elements) {
    if (element.type === "TextElement") {
      const lines = element.value.split("\n").map((line) => pseudoText(line, strangeness));
      element.value = lines.join("\n");
    } else if (element.expression.type === "SelectExpression") {
      for (const variant of element.expression.variants) makeStrange(variant.value, strangeness);
    }
  }
}

/** A pattern that gives the text back letter for letter, braces and brackets included. */
function plainPattern(text: string): Pattern {
  const parts = text.split(/([{}\n]|^[[.*])/u).filter((part) => part !== "");
  return new PatternNode(
    parts.map((part) =>
      /^[{}[.*]$/.test(part) ? new Placeable(new StringLiteral(part)) : new TextElement(part),
    ),
  );
}
