import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import type { RoomPhone, RoomScenario } from "../../src/rehearsal/room-scenario.ts";

/** A small room with the three phones, for tests. */
export function roomScenario(): RoomScenario {
  const phone = (id: string, role: string, person: { id: number; name: string }): RoomPhone => ({
    id,
    role,
    person: { ...person, language: "en" },
    about: `${person.name} is here to help.`,
    phoneNumber: `+00 555 0${person.id - 900}`,
    place: { latitude: 47.5, longitude: 9.25 },
    lines: ["My tractor only clicks"],
  });
  return {
    title: "Rehearsal",
    about: "Three people of a hay co-operative.",
    phones: [
      phone("operator", "Operator", { id: 1001, name: "Olga" }),
      phone("dispatcher", "Dispatcher", { id: 1002, name: "Dario" }),
      phone("technician", "Technician", { id: 1003, name: "Tilda" }),
    ],
    languages: [
      { tag: "en", name: "English" },
      { tag: "de", name: "Deutsch" },
    ],
    pictures: [{ id: "posts", title: "Battery posts", bytes: samplePicture() }],
  };
}
