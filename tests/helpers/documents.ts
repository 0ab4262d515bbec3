import type { CaseDocument, PersonDocument, ShopDocument } from "../../src/domain/documents.ts";

const ledger = (version: number) => ({ format: 1, version, updates: ["u1"], outbox: [], sent: {} });
const stamp = { at: 5, by: "op", update: "u1" };

/** A case with something of everything in it. */
export function caseDocument(version = 1): CaseDocument {
  return {
    ...ledger(version),
    kind: "case",
    id: "A1",
    sent: { "slip@-5": { chat: "-5", message: "9" } },
    outbox: [
      {
        id: "case/A1/1/0/x",
        sequence: 3,
        notBefore: 10,
        attempts: 0,
        cancelIf: { revisionAbove: 2 },
        effect: {
          do: "say",
          to: { chat: "-5", topic: 4 },
          language: "de",
          slot: "slip",
          message: {
            lines: [
              {
                say: {
                  key: "reading",
                  args: {
                    volts: { quantity: 12.4, unit: "V", digits: 1 },
                    names: { list: ["a", 2, { know: "fault.x" }, { phrase: { raw: "own" } }] },
                    when: { time: 7, style: "day-hour" },
                  },
                },
                style: "step",
                gap: true,
              },
            ],
            buttons: [[{ label: { raw: "1" }, press: { case: "A1", revision: 2, act: "go" } }]],
            file: { id: "f", kind: "video-note", bytes: 5 },
          },
        },
      },
    ],
    events: [
      {
        ...stamp,
        type: "case.opened",
        operator: "op",
        name: "Ann",
        chat: "11",
        language: "de",
        knowledge: "k1",
        seed: 7,
      },
      { ...stamp, type: "machine.described", facts: { fuel: "diesel", features: { pto: true } } },
      {
        ...stamp,
        type: "question.asked",
        to: "operator",
        asking: { about: "check", check: "lights", menu: "dim" },
        revision: 1,
      },
      {
        ...stamp,
        type: "answer.given",
        report: {
          observation: "battery-rest-volts",
          epoch: 0,
          reporter: "operator",
          said: { kind: "value", value: 12.4 },
          hedge: 0.5,
          probes: "post",
        },
      },
      {
        ...stamp,
        type: "act.done",
        act: "jump",
        performer: "operator",
        outcome: "no-change",
        update: null,
      },
    ],
  };
}

export function personDocument(version = 1): PersonDocument {
  return {
    ...ledger(version),
    kind: "person",
    id: "op",
    name: "Ann",
    chat: "11",
    language: "de",
    machines: [{ id: "m", title: "Old Grey", facts: { kind: "old-tractor", volts: 6 } }],
    reachable: true,
  };
}

export function shopDocument(version = 1): ShopDocument {
  return {
    ...ledger(version),
    kind: "shop",
    id: "shop",
    members: [{ person: "b", name: "Bo", chat: "2", language: "en", role: "owner" }],
    invites: [{ digest: "d", role: "technician", expires: 99, by: "b" }],
    counter: { chat: "-5" },
    secret: "s3cret",
  };
}
