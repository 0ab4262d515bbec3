import { linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { TurnrowError } from "../domain/result.ts";

/** Another process uses the data folder. */
export class AlreadyRunning extends TurnrowError {
  override readonly name = "AlreadyRunning";
  constructor(folder: string, pid: string) {
    super(
      `another Turnrow (process ${pid}) already uses the data folder ${folder}; ` +
        "stop it first, or give this one a folder of its own",
    );
  }
}

export interface InstanceLock {
  release(): void;
}

/**
 * What tells a process from a later one of the same number; null where no such process lives.
 * Numbers are used again, above all in containers, where the program is often number 1.
 */
export function processMark(pid: number): string | null {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (!(error instanceof Error && "code" in error && error.code === "EPERM")) return null;
  }
  try {
    // Linux: the 22nd field is the start, in ticks since boot; the name before may hold spaces.
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    const started = stat.slice(stat.lastIndexOf(")") + 2).split(" ")[19];
    const boot = readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
    return `${boot} ${started}`;
  } catch {
    return "alive";
  }
}

/**
 * Makes sure that one process at a time uses a folder. A lock whose process is gone is taken over.
 *
 * @throws AlreadyRunning where its process lives
 */
export function takeInstanceLock(
  folder: string,
  pid: number = process.pid,
  mark: typeof processMark = processMark,
): InstanceLock {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, "turnrow.lock");
  const own = `${pid}\n${mark(pid)}\n`;
  for (let round = 0; round < 3; round++) {
    try {
      writeFileSync(path, own, { flag: "wx" });
      return { release: () => release(path, own) };
    } catch (error) {
      if (!(error instanceof Error && "code" in error && error.code === "EEXIST")) throw error;
    }
    removeStale(path, folder, { pid, mark });
  }
  throw new AlreadyRunning(folder, "unknown");
}

function release(path: string, own: string): void {
  if (readText(path) === own) rmSync(path, { force: true });
}

function readText(path: string): string | null {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return null;
  }
}

interface Self {
  readonly pid: number;
  readonly mark: typeof processMark;
}

function holderOf(text: string, { mark }: Self): string | null {
  const [pid = "", written = ""] = text.split("\n");
  if (!/^\d+$/.test(pid)) return null;
  const alive = mark(Number(pid));
  return alive !== null && (alive === written || alive === "alive") ? pid : null;
}

function removeStale(path: string, folder: string, self: Self): void {
  const text = readText(path);
  if (text === null) return;
  const holder = holderOf(text, self);
  if (holder !== null) throw new AlreadyRunning(folder, holder);
  // Two may come here at once: each moves away what it finds, and puts a living one's lock back.
  const aside = `${path}.${self.pid}`;
  try {
    renameSync(path, aside);
  } catch {
    return;
  }
  const moved = readText(aside);
  const living = moved === null ? null : holderOf(moved, self);
  if (living !== null) linkSync(aside, path);
  rmSync(aside, { force: true });
  if (living !== null) throw new AlreadyRunning(folder, living);
}
