import type { PhotoFound } from "../domain/case-events.ts";
import type { PersonDocument } from "../domain/documents.ts";
import type { FileRef } from "../domain/effects.ts";
import { foldCase } from "../domain/fold-case.ts";
import { FollowUp } from "../domain/follow-up.ts";
import { technicianGone } from "../talk/counter-hand.ts";
import type { Decision } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { passedOnTurn } from "../talk/hand-all.ts";
import { laterTurn, photoTurn } from "../talk/later.ts";
import { tookInTurn } from "../talk/merge.ts";
import type { Commit } from "./commit.ts";
import type { Tell } from "./ports.ts";

/** Machines kept for a person; the one not seen for longest goes first. */
const MACHINES_KEPT = 12;

/** Looks at a photo; null: it cannot be had just now. */
export type LookAtPhoto = (file: FileRef) => Promise<PhotoFound | null>;

export interface FollowParts {
  readonly commit: Commit;
  readonly desk: (now: number) => Desk;
  readonly look: LookAtPhoto;
}

/** A photo cannot be fetched now; it is tried again later. */
export class PhotoNotThere extends Error {
  override readonly name = "PhotoNotThere";
}

type Seen = Extract<FollowUp, { type: "machine.seen" }>["machine"];

/** The machine moves to the end; one of the same name, kind and fuel is the same machine. */
function withMachine(person: PersonDocument, machine: Seen): PersonDocument["machines"] {
  const isSame = (one: Seen) =>
    one.id === machine.id ||
    (one.title === machine.title &&
      one.facts.kind === machine.facts.kind &&
      one.facts.fuel === machine.facts.fuel);
  const known = person.machines.find(isSame);
  const others = person.machines.filter((one) => !isSame(one));
  const title = machine.title || (known?.title ?? "");
  const facts = { ...known?.facts, ...machine.facts };
  const kept = { facts, id: known?.id ?? machine.id, title };
  return [...others, kept].slice(-MACHINES_KEPT);
}

/** Applies what one document tells another; under the same update id twice does nothing. */
export function createFollow(parts: FollowParts): (told: Tell, update: string) => Promise<void> {
  const { commit, desk } = parts;

  async function toPerson(id: string, update: string, followUp: FollowUp): Promise<void> {
    await commit({ kind: "person", id }, update, (person) => {
      // Somebody who was forgotten stays forgotten.
      if (person === null || person.name === "") return null;
      if (followUp.type === "machine.seen") {
        const machines = withMachine(person, followUp.machine);
        return { body: { ...person, machines }, effects: [] };
      }
      if (followUp.type !== "equipment.told") return null;
      return { body: { ...person, has: followUp.has }, effects: [] };
    });
  }

  type Turn = (state: ReturnType<typeof foldCase>, at: number) => Decision;
  async function toCase(id: string, update: string, turn: Turn): Promise<void> {
    await commit({ kind: "case", id }, update, (document, at) => {
      if (document === null) return null;
      const { happenings, effects } = turn(foldCase(id, document.events), at);
      if (happenings.length === 0 && effects.length === 0) return null;
      return { by: "turnrow", happenings, effects };
    });
  }

  async function lookAt(id: string, update: string, file: string): Promise<void> {
    let ref: FileRef | undefined;
    await commit({ kind: "case", id }, null, (document) => {
      const state = document === null ? null : foldCase(id, document.events);
      ref = state?.files.find((one) => one.file.id === file)?.file;
      return null;
    });
    if (ref === undefined) return;
    const found = await parts.look(ref);
    if (found === null) throw new PhotoNotThere("The photo cannot be fetched now.");
    await toCase(id, update, (state) => photoTurn(state, file, found));
  }

  return async ({ document, event }, update) => {
    const read = FollowUp.safeParse(event);
    if (!read.success) return;
    const followUp = read.data;
    switch (followUp.type) {
      case "machine.seen":
      case "equipment.told":
        return toPerson(document.id, update, followUp);
      case "took-in":
        return toCase(document.id, update, (state, at) => tookInTurn(state, followUp, desk(at)));
      case "technician.gone": {
        const { person } = followUp;
        return toCase(document.id, update, (state, at) => technicianGone(state, person, desk(at)));
      }
      case "passed-on":
        return toCase(document.id, update, (state, at) => passedOnTurn(state, followUp, desk(at)));
      case "photo.came":
        return lookAt(document.id, update, followUp.file);
      default:
        return toCase(document.id, update, (state, at) => laterTurn(state, followUp, desk(at)));
    }
  };
}
