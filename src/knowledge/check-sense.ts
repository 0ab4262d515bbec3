import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import type { Gathered } from "./gather.ts";
export function checkSense(_g: Gathered, _k: Knowledge): Problem[] {
  return [];
}
