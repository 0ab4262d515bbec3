import type { Problem } from "../domain/result.ts";
import type { Gathered } from "./gather.ts";
export function checkSafety(_g: Gathered): Problem[] {
  return [];
}
