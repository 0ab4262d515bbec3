import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { z } from "zod";

const Line = z.strictObject({
  when: z.string().exactOptional(),
  press: z.string().exactOptional(),
  say: z.string().exactOptional(),
  photo: z.boolean().exactOptional(),
});
const Phone = z.strictObject({
  id: z.int().positive(),
  name: z.string(),
  role: z.string(),
  about: z.string(),
  phoneNumber: z.string(),
  place: z.strictObject({ latitude: z.number(), longitude: z.number() }),
  lines: z.array(z.string()).default([]),
});
const Scenario = z.strictObject({
  title: z.string(),
  about: z.string(),
  phones: z.strictObject({ operator: Phone, dispatcher: Phone, technician: Phone }),
  call: z.strictObject({
    opening: z.string(),
    operator: z.array(Line),
    dispatcher: z.array(Line),
    technician: z.array(Line),
    fallback: z.array(z.string()),
  }),
});
export type Scenario = z.infer<typeof Scenario>;

/** The invented people and their call, from flows/demo. */
export function loadScenario(root: string): Scenario {
  return Scenario.parse(parse(readFileSync(join(root, "flows/demo/scenario.yaml"), "utf8")));
}
