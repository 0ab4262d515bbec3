import sharp from "sharp";
import { type GreyPicture, sharpness } from "./sharpness.ts";

/** Picture formats we open. Anything else is passed on unseen: SVG, for one, is a program. */
const formats = ["jpeg", "png", "webp"] as const;
export type PhotoFormat = (typeof formats)[number];

/** When a photo is worth asking for a better one. */
export interface PhotoLimits {
  /** Shorter side in px below which details cannot be made out. */
  readonly leastSide: number;
  /** Grey level (0 to 255) which nine tenths of a picture lie below when it is too dark. */
  readonly darkLevel: number;
  /** `sharpness` below which nothing in the picture is sharp. */
  readonly leastSharpness: number;
  /** Pixels above which a picture is not opened. */
  readonly mostPixels: number;
}

/**
 * Engineering estimates. On made pictures 640 px wide, with letters 11 to 34 px high, a blur of 1 px
 * (Gaussian sigma) measures 18 to 21, in weak light 7 to 8, and is easily read; a blur of 3 px
 * measures 2 to 3 and is not. Grain of a dark photo can hide a blur. Phones take 12 to 108 million
 * pixels.
 */
export const usualPhotoLimits: PhotoLimits = {
  leastSide: 320,
  darkLevel: 40,
  leastSharpness: 5,
  mostPixels: 110_000_000,
};

export interface PhotoFindings {
  /** Whether it could be opened as a picture; where not, the rest says nothing. */
  readonly readable: boolean;
  readonly format: PhotoFormat | null;
  readonly tooDark: boolean;
  readonly blurred: boolean;
  readonly tiny: boolean;
}

const unreadable: PhotoFindings = {
  readable: false,
  format: null,
  tooDark: false,
  blurred: false,
  tiny: false,
};

/** The longer side at which light and sharpness are judged, so that every camera is judged alike. */
const JUDGED_SIDE = 640;

/** Looks whether a photo can be of use. Never throws: what is no picture is unreadable. */
export async function inspectPhoto(
  bytes: Uint8Array,
  limits: PhotoLimits = usualPhotoLimits,
): Promise<PhotoFindings> {
  try {
    const { format, width, height } = await sharp(bytes).metadata();
    const known = formats.find((name) => name === format);
    if (known === undefined || width * height > limits.mostPixels) return unreadable;
    const grey = await judgedPicture(bytes, limits);
    const tooDark = levelBelow(grey, 0.9) < limits.darkLevel;
    return {
      readable: true,
      format: known,
      tooDark,
      // In the dark nothing is sharp; the first thing to say is that it is dark.
      blurred: !tooDark && sharpness(grey) < limits.leastSharpness,
      tiny: Math.min(width, height) < limits.leastSide,
    };
  } catch {
    return unreadable;
  }
}

async function judgedPicture(bytes: Uint8Array, limits: PhotoLimits): Promise<GreyPicture> {
  const { data, info } = await sharp(bytes, { limitInputPixels: limits.mostPixels })
    .resize(JUDGED_SIDE, JUDGED_SIDE, { fit: "inside", withoutEnlargement: true })
    .flatten({ background: "#ffffff" })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, levels: data };
}

/** The grey level below which the given share of the picture lies. */
function levelBelow({ levels }: GreyPicture, share: number): number {
  const counts = new Array<number>(256).fill(0);
  for (const level of levels) counts[level] = (counts[level] ?? 0) + 1;
  let seen = 0;
  for (const [level, count] of counts.entries()) {
    seen += count;
    if (seen >= share * levels.length) return level;
  }
  return 255;
}
