import type { Carried, Carrier, CarryContext, Outgoing } from "../../src/cases/ports.ts";

export interface Carriage {
  readonly text: string;
  readonly chat: string;
  readonly at: number;
  readonly context: CarryContext;
}

export interface FakeCarrier extends Carrier {
  readonly carried: readonly Carriage[];
  /** What happens to the next messages of a text; then they succeed. */
  script(text: string, ...outcomes: (Carried | Error | Promise<Carried>)[]): void;
  texts(chat?: string): readonly string[];
}

/** A chat that notes what it is given and answers as told. */
export function createFakeCarrier(
  now: () => number,
  limits: Carrier["limits"] = () => [],
  overall: Carrier["overall"] = [],
): FakeCarrier {
  const carried: Carriage[] = [];
  const scripts = new Map<string, (Carried | Error | Promise<Carried>)[]>();
  let messages = 100;
  return {
    carried,
    limits,
    overall,
    script: (text, ...outcomes) => void scripts.set(text, outcomes),
    texts: (chat) =>
      carried.filter((one) => chat === undefined || one.chat === chat).map(({ text }) => text),
    async carry(effect: Outgoing, context) {
      const say = effect.message.lines[0]?.say;
      const text = say && "raw" in say ? say.raw : "";
      const { chat } = effect.to;
      carried.push({ text, chat, at: now(), context });
      const outcome = scripts.get(text)?.shift();
      if (outcome instanceof Error) throw outcome;
      return outcome ?? { outcome: "done", sent: { chat, message: String(messages++) } };
    },
  };
}
