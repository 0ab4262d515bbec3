import type { Phrase } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";
import type { Commit } from "./commit.ts";
import { backoff } from "./delivery.ts";
import type { Directory } from "./directory.ts";
import type { Quarantine, Received, Reception, Timers } from "./ports.ts";

/** Twice could be bad luck. */
const TRIES = 3;

export interface ReceptionParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly timers: Timers;
  readonly quarantine: Quarantine;
  /** Decides what follows and commits it; may throw. */
  readonly handle: (incoming: Incoming) => Promise<Received>;
  /** What a person is told whose message could not be handled. */
  readonly apology: Phrase;
  /** Is it the storage's error? Waiting may help then, and going on would lose what was said. */
  readonly isStorageTrouble: (error: unknown) => boolean;
  readonly report: (error: unknown, incoming: Incoming) => void;
}

/**
 * Lets each update through once, and none block the others: one that fails again and again is kept
 * aside and answered kindly. Storage trouble is waited out instead, because an update that goes on
 * without being written is lost.
 */
export function createReception(parts: ReceptionParts): Reception {
  const { directory, timers } = parts;
  const sleep = (milliseconds: number) =>
    new Promise<void>((resolve) => void timers.after(milliseconds, resolve));

  async function setAside(incoming: Incoming, error: unknown): Promise<Received> {
    const name = error instanceof Error ? `${error.name}: ${error.message}` : "unknown error";
    await parts.quarantine.put({ incoming, at: timers.now(), error: name });
    await apologise(incoming);
    return { toast: parts.apology, ...languageFor(incoming) };
  }

  const languageFor = ({ from }: Incoming) => {
    const language = directory.person(from.id)?.language ?? from.language;
    return language === undefined ? {} : { language };
  };

  function apologise({ chat, topic, from, update }: Incoming) {
    return parts.commit({ kind: "person", id: from.id }, update, (person) => {
      const language = person?.language ?? from.language ?? "en";
      const { name, machines, reachable } = person ?? {
        name: from.name,
        machines: [],
        reachable: true,
      };
      const message = { lines: [{ say: parts.apology }] };
      const to = topic === undefined ? { chat } : { chat, topic };
      return {
        body: { ...person, name, chat: person?.chat ?? from.id, language, machines, reachable },
        effects: [{ effect: { do: "say", to, language, message } }],
      };
    });
  }

  async function insist(incoming: Incoming, work: () => Promise<Received>): Promise<Received> {
    let failures = 0;
    for (let waits = 1; ; ) {
      try {
        // A try that failed late may have been written already.
        return directory.seen(incoming.update) ? {} : await work();
      } catch (error) {
        parts.report(error, incoming);
        if (parts.isStorageTrouble(error)) await sleep(backoff(waits++));
        else if (++failures >= TRIES) throw error;
      }
    }
  }

  return {
    async receive(incoming) {
      if (directory.seen(incoming.update)) return {};
      try {
        return await insist(incoming, () => parts.handle(incoming));
      } catch (error) {
        return insist(incoming, () => setAside(incoming, error)).catch(() => ({}));
      }
    },
  };
}
