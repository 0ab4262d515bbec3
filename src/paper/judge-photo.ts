import { inspectPhoto } from "./photo.ts";

/** What a photo is worth to whoever looks at it; what cannot be opened here is passed on unseen. */
export async function judgePhoto(
  bytes: Uint8Array,
): Promise<"fine" | "dark" | "blurred" | "tiny" | "not-checked"> {
  const found = await inspectPhoto(bytes);
  if (!found.readable) return "not-checked";
  if (found.tiny) return "tiny";
  if (found.tooDark) return "dark";
  return found.blurred ? "blurred" : "fine";
}
