// Makes a fresh clone runnable: installs what is missing and builds what has changed.
// It has no dependencies of its own, and everything it prints goes to stderr, so that a command's
// stdout stays machine-readable.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const at = (path) => join(root, path);

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  fail(`Turnrow needs Node 20.19 or newer; this is Node ${process.versions.node}.`);
}

function fail(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

function run(command, args) {
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: ["ignore", process.stderr, process.stderr],
    shell: process.platform === "win32",
  });
  return done.status === 0;
}

const digest = (paths) => {
  const hash = createHash("sha256");
  for (const path of paths)
    hash
      .update(path)
      .update("\0")
      .update(readFileSync(at(path)));
  return hash.digest("hex");
};

const read = (path) => (existsSync(at(path)) ? readFileSync(at(path), "utf8") : "");

function sources(folder) {
  return readdirSync(at(folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join(folder, name))
    .sort();
}

const lock = digest(["package.json", "package-lock.json"]);
if (read("node_modules/.turnrow-ready") !== lock) {
  process.stderr.write("Installing packages …\n");
  if (!run("npm", ["ci", "--no-fund", "--no-audit", "--loglevel=error"])) {
    fail("The packages could not be installed. Is the network reachable? Try `npm ci` by hand.");
  }
  writeFileSync(at("node_modules/.turnrow-ready"), lock);
}

const build = digest(["tsconfig.json", "package-lock.json", ...sources("src")]);
if (read(".build/.ready") !== build) {
  process.stderr.write("Building …\n");
  rmSync(at(".build"), { recursive: true, force: true });
  mkdirSync(at(".build"), { recursive: true });
  if (!run(process.execPath, [at("node_modules/typescript/bin/tsc"), "-p", "tsconfig.json"])) {
    fail("The program does not compile; see the messages above.");
  }
  writeFileSync(at(".build/.ready"), build);
}
