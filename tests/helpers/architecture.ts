/** A source tree as text: path from the project's root → content. */
export type Tree = ReadonlyMap<string, string>;

export interface Rule {
  readonly folder: string;
  /** Own folders it may import from, besides itself. */
  readonly own: readonly string[];
  /** Packages and built-in modules it may import; `node:` alone allows all built-ins. */
  readonly packages: readonly string[];
  readonly because: string;
}

/** The import rule of every folder under src; a folder without a line is itself a violation. */
export const rules: readonly Rule[] = [
  {
    folder: "domain",
    own: [],
    packages: ["zod"],
    because: "everyone points here; it points nowhere",
  },
  {
    folder: "diagnosis",
    own: ["domain"],
    packages: [],
    because: "pure: replayed, tested, reasoned about",
  },
  {
    folder: "circuit",
    own: ["domain"],
    packages: [],
    because: "pure: a bank is a function of file and seed",
  },
  {
    folder: "reading",
    own: ["domain"],
    packages: ["snowball-stemmers", "fastest-levenshtein", "tinyld"],
    because: "pure: the same text always reads the same",
  },
  {
    folder: "talk",
    own: ["domain", "diagnosis"],
    packages: [],
    because: "pure: decides, never acts",
  },
  {
    folder: "cases",
    own: ["domain", "diagnosis", "talk", "reading"],
    packages: ["node:crypto"],
    because: "use-cases and ports; the edge plugs into it",
  },
  {
    folder: "knowledge",
    own: ["domain", "circuit"],
    packages: ["zod", "yaml", "@fluent/syntax", "node:"],
    because: "turns files into the checked model",
  },
  { folder: "wording", own: ["domain"], packages: ["@fluent/bundle"], because: "words come last" },
  {
    folder: "paper",
    own: ["domain", "wording"],
    packages: ["@resvg/resvg-js", "pdfkit", "sharp", "fontkit", "uqr", "node:"],
    because: "pictures and paper are made from facts and words",
  },
  {
    folder: "store",
    own: ["domain", "cases"],
    packages: ["lowdb", "zod", "node:"],
    because: "an edge",
  },
  {
    folder: "chat",
    own: ["domain", "cases", "wording", "paper"],
    packages: ["grammy", "node:"],
    because: "an edge: Telegram in, Telegram out",
  },
  {
    folder: "rehearsal",
    own: ["domain"],
    packages: ["@grammyjs/types", "node:"],
    because: "stands in for the chat service, so it may not know the program",
  },
  {
    folder: "commands",
    own: [
      "domain",
      "diagnosis",
      "circuit",
      "reading",
      "talk",
      "cases",
      "knowledge",
      "wording",
      "paper",
      "store",
      "chat",
      "rehearsal",
      "config",
    ],
    packages: ["yaml", "zod", "pdfkit", "node:"],
    because: "one file a command line verb, wired like main; pdfkit is a peer in the bench",
  },
];

/** Files directly under src and what they may import. */
export const rootFiles: Readonly<
  Record<string, { own: readonly string[]; packages: readonly string[] }>
> = {
  "main.ts": { own: ["*"], packages: ["node:"] },
  "config.ts": { own: ["domain"], packages: ["zod", "node:"] },
};

/** Files that may be longer than the limit: types and tables, each with its reason. */
export const longFiles: Readonly<Record<string, string>> = {
  "src/domain/knowledge.ts": "the types of everything in flows/, read as one page",
};

export const LINE_LIMIT = 250;

const pureFolders = ["domain", "diagnosis", "circuit", "reading", "talk"];

/** What a pure folder may not even mention. */
const impure: readonly [RegExp, string][] = [
  [/\bDate\.now\b|\bnew Date\(\)/, "reads the clock"],
  [/\bperformance\.now\b/, "reads the clock"],
  [/\bMath\.random\b|\bcrypto\b/, "rolls dice"],
  [/\bprocess\.|\bconsole\./, "touches the process or the console"],
  [/\bsetTimeout\b|\bsetInterval\b|\bsetImmediate\b|\bqueueMicrotask\b/, "waits"],
  [/\basync\b|\bawait\b|\bPromise\b/, "is asynchronous"],
  [/["']node:/, "uses a built-in module"],
  [/\bfetch\(/, "uses the network"],
];

/** Code without comments, strings kept: a commented-out import is no import. */
export function stripComments(code: string): string {
  return code.replace(
    /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g,
    (_, kept) => kept ?? "",
  );
}

/** Every module a file imports, type imports, re-exports and dynamic imports included. */
export function importsOf(code: string): string[] {
  const bare = stripComments(code);
  const found: string[] = [];
  for (const match of bare.matchAll(/\b(?:import|export)\b[^"';]*?\bfrom\s*["']([^"']+)["']/g)) {
    if (match[1] !== undefined) found.push(match[1]);
  }
  for (const match of bare.matchAll(/\bimport\s*\(?\s*["']([^"']+)["']/g)) {
    if (match[1] !== undefined) found.push(match[1]);
  }
  return found;
}

function resolve(from: string, target: string): string {
  const parts = from.split("/").slice(0, -1);
  for (const piece of target.split("/")) {
    if (piece === "..") parts.pop();
    else if (piece !== ".") parts.push(piece);
  }
  return parts.join("/");
}

const packageName = (name: string) =>
  name.startsWith("@") ? name.split("/").slice(0, 2).join("/") : (name.split("/")[0] ?? name);

const mayUse = (packages: readonly string[], name: string) =>
  name.startsWith("node:")
    ? packages.includes("node:") || packages.includes(name)
    : packages.includes(packageName(name));

function ruleOf(path: string): Pick<Rule, "own" | "packages"> | undefined {
  const [, top = "", ...rest] = path.split("/");
  return rest.length === 0 ? rootFiles[top] : rules.find((one) => one.folder === top);
}

/** The folder of a file under src, or its own name where it stands directly there. */
const roomOf = (path: string) => (path.split("/")[1] ?? "").replace(/\.ts$/, "");

function brokenImport(path: string, target: string, tree: Tree): string | null {
  const rule = ruleOf(path);
  if (rule === undefined) return null;
  if (!target.startsWith(".")) {
    return mayUse(rule.packages, target) ? null : `${path}: may not import ${target}`;
  }
  const file = resolve(path, target);
  const [from, to] = [roomOf(path), roomOf(file)];
  const allowed = from === to || rule.own.includes("*") || rule.own.includes(to);
  if (!allowed) return `${path}: may not import ${file}`;
  return tree.has(file) ? null : `${path}: imports ${file}, which is not there`;
}

/** All broken import rules of a tree, one sentence each. */
export function brokenImports(tree: Tree): string[] {
  const broken: string[] = [];
  for (const [path, code] of tree) {
    if (ruleOf(path) === undefined) broken.push(`${path}: its folder has no import rule`);
    for (const target of importsOf(code)) {
      const found = brokenImport(path, target, tree);
      if (found !== null) broken.push(found);
    }
  }
  return broken;
}

/** Groups of files that import each other in a ring (type imports count). */
export function cycles(tree: Tree): string[] {
  const state = new Map<string, "open" | "done">();
  const found: string[] = [];
  const visit = (path: string, trail: readonly string[]) => {
    if (state.get(path) === "done") return;
    if (state.get(path) === "open") {
      found.push([...trail.slice(trail.indexOf(path)), path].join(" → "));
      return;
    }
    state.set(path, "open");
    for (const target of importsOf(tree.get(path) ?? "")) {
      if (target.startsWith(".")) visit(resolve(path, target), [...trail, path]);
    }
    state.set(path, "done");
  };
  for (const path of tree.keys()) visit(path, []);
  return found;
}

/** Impure words in the pure folders. */
export function impurities(tree: Tree): string[] {
  const found: string[] = [];
  for (const [path, code] of tree) {
    if (!pureFolders.includes(path.split("/")[1] ?? "")) continue;
    const bare = stripComments(code);
    for (const [pattern, what] of impure) if (pattern.test(bare)) found.push(`${path}: ${what}`);
  }
  return found;
}

/** Names and shapes the house does not have: utils folders, index files, default exports, long files. */
export function untidy(tree: Tree): string[] {
  const found: string[] = [];
  for (const [path, code] of tree) {
    if (/\/(utils?|helpers|common|misc)(\/|\.ts$)/.test(path))
      found.push(`${path}: a drawer, not an idea`);
    if (/\/index\.ts$/.test(path)) found.push(`${path}: no index files`);
    const bare = stripComments(code);
    if (/\bexport\s+default\b/.test(bare)) found.push(`${path}: a default export`);
    if (/\bexport\s+(?:\*|\{[^}]*\})\s*from\b/.test(bare)) found.push(`${path}: re-exports`);
    if (/:\s*any\b|\bas any\b|<any>/.test(bare)) found.push(`${path}: any`);
    if (/@ts-(ignore|expect-error|nocheck)/.test(code))
      found.push(`${path}: silences the compiler`);
    const lines = code.split("\n").length - 1;
    if (lines > LINE_LIMIT && longFiles[path] === undefined) found.push(`${path}: ${lines} lines`);
  }
  return found;
}

/** Calls of the Bot API outside the two places that may make them. */
export function strayCalls(tree: Tree, allowed: readonly string[]): string[] {
  const call =
    /\bctx\s*\.\s*(reply|api|answer\w*|edit\w*|delete\w*|send\w*|forward\w*|copy\w*)\b|\b(?:bot|\w*[bB]ot)\s*\.\s*api\b/;
  return [...tree]
    .filter(
      ([path, code]) =>
        path.startsWith("src/") &&
        !path.startsWith("src/rehearsal/") &&
        !allowed.includes(path) &&
        call.test(stripComments(code)),
    )
    .map(([path]) => `${path}: calls the Bot API`);
}

/** What is left of a file without its types: nothing, where it holds no code. */
function withoutTypes(code: string): string {
  return stripComments(code)
    .replace(/^(?:export )?interface [\s\S]*?^\}/gm, "")
    .replace(/^(?:export )?type [\s\S]*?;$/gm, "");
}

/** Source files that hold code but have no test file at the same place under tests. */
export function untested(
  tree: Tree,
  tests: ReadonlySet<string>,
  covered: Readonly<Record<string, string>>,
): string[] {
  return [...tree]
    .filter(
      ([path, code]) =>
        path !== "src/main.ts" && /\bfunction\b|=>|\bclass\b/.test(withoutTypes(code)),
    )
    .map(([path]) => path)
    .filter((path) => {
      const own = path.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts");
      return !tests.has(own) && !tests.has(covered[path] ?? "");
    })
    .map((path) => `${path}: has no test`);
}
