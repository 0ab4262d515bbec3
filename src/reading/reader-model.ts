import type { Knowledge } from "../domain/knowledge.ts";
import type { ReaderModel, ReaderObservation } from "../domain/reading.ts";

/** The part of the knowledge that reading needs; nothing is added. */
export function readerModel(knowledge: Knowledge): ReaderModel {
  const observations = new Map<string, ReaderObservation>();
  for (const [id, observation] of knowledge.observations) {
    observations.set(id, {
      id,
      title: observation.title,
      kind: observation.kind,
      states: observation.states,
      scalesWithVolts: observation.scalesWithVolts,
      ...(observation.unit === undefined ? {} : { unit: observation.unit }),
      ...(observation.plausible === undefined ? {} : { plausible: observation.plausible }),
    });
  }
  const machines = [...knowledge.machines.values()].map((machine) => ({
    id: machine.id,
    synonyms: [machine.title, ...machine.synonyms],
    fuels: machine.fuels,
    volts: machine.volts,
  }));
  return { observations, machines };
}
