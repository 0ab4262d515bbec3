import { join } from "node:path";
import PDFDocument from "pdfkit";
import { openDirectory } from "../cases/directory.ts";
import { createEngineRoom } from "../cases/engine-room.ts";
import { createLists } from "../cases/lobby-lists.ts";
import { chooseCircuits } from "../circuit/choose-circuit.ts";
import { foldCase } from "../domain/fold-case.ts";
import { ShopSettings } from "../domain/settings.ts";
import { loadUrgency, urgencyOf } from "../knowledge/urgency.ts";
import { bundledFonts } from "../paper/bundled-fonts.ts";
import { renderPng } from "../paper/png.ts";
import { createPrinter } from "../paper/print-paper.ts";
import type { Desk } from "../talk/desk.ts";
import { jobSheet } from "../talk/job-sheet.ts";
import { causesCard } from "../talk/pictures.ts";
import { slipMessage } from "../talk/slip.ts";
import { type Spent, spentOn } from "./bench-engine.ts";
import { inventedCase, inventedStore, NOW } from "./invented-cases.ts";
import { openSpeech } from "./speech.ts";
import type { Workshop } from "./workshop.ts";

/** Ours beside something that anybody can name, in the same run on the same computer. */
export interface Compared extends Spent {
  readonly peer: string;
  readonly peerMedianMs: number;
  /** How many times longer ours takes. */
  readonly ratio: number;
}

export interface ShopBench {
  readonly open: number;
  readonly closed: number;
  /** Whole programs start with this: every case read and summed up. */
  readonly directoryMs: number;
  /** The first page of the calls after something happened in one of them. */
  readonly firstPage: Compared;
  readonly find: Compared;
  /** A slip after something new was told: the engine thinks, the words are set. */
  readonly slip: Compared;
  /** The same where nothing was told that the engine does not know yet. */
  readonly slipAgain: Compared;
  readonly causesPicture: Compared;
  readonly jobSheet: Compared;
}

export interface ShopBenchOptions {
  readonly open: number;
  readonly closed: number;
  /** Repeats of each measurement. */
  readonly repeats: number;
}

export const FULL_SHOP: ShopBenchOptions = { open: 10_000, closed: 100_000, repeats: 20 };

function compared(ours: Spent, peer: string, { medianMs }: Spent): Compared {
  return { ...ours, peer, peerMedianMs: medianMs, ratio: ours.medianMs / medianMs };
}

/** Like `spentOn`, for work that is waited for. */
async function spentAwaiting(call: () => Promise<unknown>, repeats: number): Promise<Spent> {
  const times: number[] = [];
  for (let n = 0; n <= repeats; n += 1) {
    const before = performance.now();
    await call();
    times.push(performance.now() - before);
  }
  // The first one warms up.
  const sorted = times.slice(1).sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(repeats - 1, Math.floor(part * repeats))] ?? 0;
  return { medianMs: at(0.5), p99Ms: at(0.99) };
}

/** The shop's desk over these flows, without anybody at it. */
async function benchDesk({ knowledge }: Workshop, root: string): Promise<Desk> {
  const engine = createEngineRoom({ knowledge });
  const { wording } = openSpeech(root, knowledge, { timeZone: "UTC" });
  const rules = await loadUrgency(join(root, "flows"), new Set(knowledge.redFlags.keys()));
  return {
    ...{ knowledge, now: NOW, next: engine.next, triage: engine.triage, words: wording.phrase },
    members: [{ person: "2", name: "Jonas", chat: "2", language: "en", role: "dispatcher" }],
    shop: ShopSettings.parse({ name: "Bench", phone: "555", emergency: "112" }),
    ...(rules.ok ? { urgency: (facts) => urgencyOf(rules.value, facts) } : {}),
  };
}

async function benchLists(desk: Desk, options: ShopBenchOptions) {
  const { open, closed, repeats } = options;
  const before = performance.now();
  const directory = await openDirectory(inventedStore(desk.knowledge, options));
  const directoryMs = performance.now() - before;
  const lists = createLists(directory, () => desk);
  const [member] = desk.members;
  if (member === undefined) throw new Error("nobody is at the desk");
  const asked = (argument: string) => ({ member, argument, from: 0, now: NOW, lookedAt: 1 });
  const sorted = (filter: { readonly open?: boolean }) => {
    const times = directory.cases(filter).map((one) => one.openedAt);
    return () => [...times].sort((a, b) => a - b);
  };
  let version = 1;
  /** As in a shop: between two looks something happened in one of the calls. */
  function look(): void {
    version += 1;
    directory.take({
      ...inventedCase(desk.knowledge, { n: version % open, closed: false }),
      version,
    });
    lists["calls"]?.(asked(""));
  }
  const page = spentOn(look, repeats);
  const find = spentOn(() => lists["find"]?.(asked("combine meadow")), repeats);
  return {
    ...{ open, closed, directoryMs },
    firstPage: compared(
      page,
      "sorting the open cases' times",
      spentOn(sorted({ open: true }), repeats),
    ),
    find: compared(find, "sorting all cases' times", spentOn(sorted({}), repeats)),
  };
}

function benchSlip(workshop: Workshop, desk: Desk, root: string, repeats: number) {
  const { knowledge } = workshop;
  const { wording } = openSpeech(root, knowledge, { timeZone: "UTC" });
  const document = inventedCase(knowledge, { n: 1, closed: false });
  const state = foldCase(document.id, document.events);
  const peer = spentOn(() => JSON.parse(JSON.stringify(document)), repeats);
  const shown = (at: Desk) => wording.render(slipMessage(state, at), "en");
  const anew = spentOn(
    () => shown({ ...desk, triage: createEngineRoom({ knowledge }).triage }),
    repeats,
  );
  const name = "the case as JSON, there and back";
  return {
    slip: compared(anew, name, peer),
    slipAgain: compared(
      spentOn(() => shown(desk), repeats),
      name,
      peer,
    ),
  };
}

/** A page with nothing but a line of the same type. */
function plainPage(): Promise<unknown> {
  const [font = ""] = bundledFonts().files;
  const page = new PDFDocument({ size: "A4", font });
  const ended = new Promise((resolve) => page.on("end", resolve));
  page.resume();
  page.text("A plain page");
  page.end();
  return ended;
}

async function benchPaper(workshop: Workshop, desk: Desk, root: string, repeats: number) {
  const { knowledge, circuits } = workshop;
  const { wording } = openSpeech(root, knowledge, { timeZone: "UTC" });
  const print = createPrinter((machine) => chooseCircuits(circuits.values(), machine)[0]?.circuit);
  const document = inventedCase(knowledge, { n: 1, closed: false });
  const state = foldCase(document.id, document.events);
  const printed = (paper: Parameters<typeof wording.render>[0]["paper"]) => async () => {
    const worded = wording.render({ lines: [], ...(paper === undefined ? {} : { paper }) }, "en");
    if (worded.paper !== undefined) await print(worded.paper);
  };
  const blank = '<svg xmlns="http://www.w3.org/2000/svg" width="1080" height="1000"/>';
  const picture = await spentAwaiting(printed(causesCard(state, desk)), repeats);
  const sheet = await spentAwaiting(printed(jobSheet(state, desk)), repeats);
  const empty = await spentAwaiting(() => renderPng(blank), repeats);
  const plain = await spentAwaiting(plainPage, repeats);
  return {
    causesPicture: compared(picture, "resvg, an empty picture of that size", empty),
    jobSheet: compared(sheet, "pdfkit, a page with one line", plain),
  };
}

/**
 * The shop's side: the list of calls over a full archive, a slip, the sheet's picture and its PDF,
 * each beside a peer with a name.
 * @param root where flows and words are
 */
export async function benchShop(
  workshop: Workshop,
  root: string,
  options: ShopBenchOptions = FULL_SHOP,
): Promise<ShopBench> {
  const desk = await benchDesk(workshop, root);
  return {
    ...(await benchLists(desk, options)),
    ...benchSlip(workshop, desk, root, options.repeats),
    ...(await benchPaper(workshop, desk, root, options.repeats)),
  };
}
