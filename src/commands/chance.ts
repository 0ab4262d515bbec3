import { randomBytes, randomInt } from "node:crypto";
import type { Chance } from "../cases/ports.ts";

/** No letters and digits that are mistaken for each other on the phone. */
const ALPHABET = "234679ACDEFGHJKMNPQRTUVWXY";
const CASE_ID_LENGTH = 5;

/** Real chance, from the operating system. */
export const realChance: Chance = {
  caseId: () =>
    Array.from({ length: CASE_ID_LENGTH }, () => ALPHABET[randomInt(ALPHABET.length)]).join(""),
  token: () => randomBytes(24).toString("base64url"),
  seed: () => randomInt(2 ** 31),
};
