import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const project = resolve(".");

/** A folder of its own below the computer's temporary one. */
export const freshFolder = (name: string) => mkdtempSync(join(tmpdir(), `turnrow-${name}-`));

/** The same sum over the sources as the build keeps beside what it made of them. */
function sourcesDigest(): string {
  const names = readdirSync(join(project, "src"), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join("src", name))
    .sort();
  const hash = createHash("sha256");
  for (const name of ["tsconfig.json", "package-lock.json", ...names]) {
    hash.update(name).update("\0").update(readFileSync(name));
  }
  return hash.digest("hex");
}

function build(folder: string): void {
  const ready = ".build/.ready";
  if (existsSync(ready) && readFileSync(ready, "utf8") === sourcesDigest()) {
    cpSync(".build", folder, { recursive: true });
    return;
  }
  const compiler = join(project, "node_modules/typescript/bin/tsc");
  spawnSync(process.execPath, [compiler, "-p", "tsconfig.json", "--outDir", folder]);
  if (!existsSync(join(folder, "main.js"))) throw new Error("The program does not compile.");
}

/**
 * A home for the program as people run it: built, with the project's words and knowledge. It is
 * apart from the project, so that a build of somebody else does not change it under a test's feet.
 */
export function programHome(options: { readonly ownFlows?: boolean } = {}): string {
  const home = freshFolder("home");
  build(join(home, "build"));
  for (const folder of ["locales", "node_modules"]) {
    symlinkSync(join(project, folder), join(home, folder), "junction");
  }
  if (options.ownFlows === true) cpSync("flows", join(home, "flows"), { recursive: true });
  else symlinkSync(join(project, "flows"), join(home, "flows"), "junction");
  shareKept(home);
  cpSync("package.json", join(home, "package.json"));
  return home;
}

/** Programs of one build and one knowledge understand its files once; each would take seconds. */
function shareKept(home: string): void {
  const shared = join(project, ".cache", "knowledge-e2e");
  mkdirSync(shared, { recursive: true });
  mkdirSync(join(home, ".cache"));
  symlinkSync(shared, join(home, ".cache", "knowledge"), "junction");
}

export const removeFolder = (folder: string) => rmSync(folder, { recursive: true, force: true });

/** The program as a process of its own. */
export interface Program {
  readonly stdout: () => string;
  readonly stderr: () => string;
  /** Resolves with what fits, once the program has written it to its output. */
  written(pattern: RegExp): Promise<RegExpExecArray>;
  /** Resolves when it has ended: its exit code, or null where a signal ended it. */
  readonly ended: Promise<number | null>;
  /** Ends it without a chance to tidy up. */
  kill(): Promise<void>;
  /** Asks it to end, as a supervisor does. */
  stop(): Promise<number | null>;
}

const running = new Set<ChildProcess>();

/** Ends what a failed test may have left behind. */
export function killPrograms(): void {
  for (const child of running) child.kill("SIGKILL");
}

/** Starts the built program. @param environment only this and the path are there */
export function startProgram(home: string, environment: Readonly<Record<string, string>>): Program {
  const child = spawn(process.execPath, [join(home, "build/main.js"), "start"], {
    cwd: home,
    env: { TURNROW_SIMULATE: "no", PATH: process.env["PATH"], ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
  running.add(child);
  let out = "";
  let err = "";
  child.stdout.on("data", (chunk: Buffer) => {
    out += chunk.toString("utf8");
  });
  child.stderr.on("data", (chunk: Buffer) => {
    err += chunk.toString("utf8");
  });
  const ended = new Promise<number | null>((done) => {
    child.on("close", (code) => {
      running.delete(child);
      done(code);
    });
  });
  return {
    stdout: () => out,
    stderr: () => err,
    written: (pattern) =>
      new Promise((done, fail) => {
        const look = () => {
          const found = pattern.exec(out);
          if (found !== null) done(found);
        };
        child.stdout.on("data", look);
        look();
        ended.then((code) => fail(new Error(`It ended with ${code}:\n${err}`)), fail);
      }),
    ended,
    async kill() {
      child.kill("SIGKILL");
      await ended;
    },
    stop() {
      child.kill("SIGTERM");
      return ended;
    },
  };
}
