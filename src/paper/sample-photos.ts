import sharp from "sharp";
import { renderPng } from "./png.ts";
import { svgText } from "./svg.ts";

/** A drawn stand-in for a photo, for demonstrations where nobody has a camera at hand. */
export interface SamplePhoto {
  readonly id: string;
  readonly title: string;
  /** JPEG of 1280 × 960 px. */
  readonly bytes: Uint8Array;
}

const WIDTH = 1280;
const HEIGHT = 960;

interface Scene {
  readonly id: string;
  readonly title: string;
  readonly drawing: () => string;
  /** What the camera did to it. */
  readonly spoilt?: "blurred" | "dark";
}

const scenes: readonly Scene[] = [
  { id: "clean-posts", title: "Battery, clean posts", drawing: () => battery("#b9b9b4") },
  { id: "green-posts", title: "Battery, green crust", drawing: () => battery("#4f9a78") },
  { id: "fuse-box", title: "Fuses, one burnt", drawing: fuses },
  { id: "hour-meter", title: "Hour meter", drawing: hourMeter },
  { id: "blurred", title: "Blurred photo", drawing: () => battery("#b9b9b4"), spoilt: "blurred" },
  { id: "dark", title: "Photo in the dark", drawing: fuses, spoilt: "dark" },
];

/** Draws the pictures; the same every time. */
export async function drawSamplePhotos(): Promise<SamplePhoto[]> {
  return Promise.all(
    scenes.map(async ({ id, title, drawing, spoilt }) => {
      const photo = sharp(await renderPng(frame(drawing())));
      if (spoilt === "blurred") photo.blur(14);
      if (spoilt === "dark") photo.linear(0.1, 0);
      return { id, title, bytes: await photo.jpeg({ quality: 82 }).toBuffer() };
    }),
  );
}

function frame(drawing: string): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}">` +
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="#8d8a80"/>${speckle()}${drawing}</svg>`
  );
}

/** Dust and chaff, so that the ground is not even, as no real ground is. */
function speckle(): string {
  const grains = Array.from({ length: 240 }, (_, index) => {
    const x = (index * 397) % WIDTH;
    const y = (index * 661) % HEIGHT;
    return `<rect x="${x}" y="${y}" width="${3 + (index % 9)}" height="3" fill="#6f6b5f"/>`;
  });
  return grains.join("");
}

function battery(clampColour: string): string {
  const posts = [360, 920].map((x, index) => {
    const cable = index === 0 ? "#2a2a2a" : "#8c2a22";
    return [
      `<path d="M${x} 330 C ${x} 180, ${x + 60} 120, ${x + 160} 0" fill="none" stroke="${cable}"`,
      ' stroke-width="54"/>',
      `<rect x="${x - 75}" y="290" width="150" height="110" rx="14" fill="${clampColour}"`,
      ' stroke="#333" stroke-width="5"/>',
      `<circle cx="${x}" cy="345" r="34" fill="#d8d8d2" stroke="#333" stroke-width="5"/>`,
      ...crust(x, clampColour),
    ].join("");
  });
  return [
    '<rect x="160" y="380" width="960" height="500" fill="#202225" stroke="#000" stroke-width="6"/>',
    ...posts,
    `<g fill="#e8e8e2">${svgText("12 V  60 Ah", { x: 640, y: 650, size: 96, anchor: "middle" })}`,
    svgText("−                +", { x: 640, y: 500, size: 96, bold: true, anchor: "middle" }),
    "</g>",
  ].join("");
}

function crust(x: number, colour: string): string[] {
  return Array.from({ length: 26 }, (_, index) => {
    const angle = index * 2.4;
    const [dx, dy] = [Math.cos(angle) * (50 + index), Math.sin(angle) * (30 + index)];
    return `<circle cx="${x + dx}" cy="${345 + dy}" r="${6 + (index % 7)}" fill="${colour}"/>`;
  });
}

function fuses(): string {
  const colours = ["#b5482e", "#3f6fb0", "#c9a227", "#4e8f52", "#3f6fb0", "#b5482e"];
  const ratings = ["10", "15", "20", "30", "15", "10"];
  const drawn = colours.map((colour, index) => {
    const x = 220 + (index % 3) * 300;
    const y = 200 + Math.floor(index / 3) * 330;
    const burnt = index === 2;
    const wire = burnt
      ? `<path d="M${x + 50} ${y + 150} h35 M${x + 155} ${y + 150} h35" stroke="#111"/>`
      : `<path d="M${x + 50} ${y + 150} q70 -90 140 0" stroke="#ddd"/>`;
    return [
      `<rect x="${x}" y="${y}" width="240" height="230" fill="${colour}" stroke="#222"`,
      ` stroke-width="5"/><g fill="none" stroke-width="12">${wire}</g>`,
      burnt ? `<circle cx="${x + 120}" cy="${y + 150}" r="46" fill="#1b1108" opacity="0.7"/>` : "",
      `<g fill="#fff">${svgText(ratings[index] ?? "", { x: x + 120, y: y + 80, size: 70, bold: true, anchor: "middle" })}</g>`,
    ].join("");
  });
  return `<rect x="150" y="120" width="980" height="720" fill="#2b2b2b"/>${drawn.join("")}`;
}

function hourMeter(): string {
  return [
    '<circle cx="640" cy="480" r="380" fill="#1d1d1d" stroke="#555" stroke-width="24"/>',
    '<rect x="380" y="410" width="520" height="150" fill="#efeee6" stroke="#000" stroke-width="6"/>',
    `<g fill="#111">${svgText("01384.6", { x: 640, y: 520, size: 110, bold: true, anchor: "middle" })}</g>`,
    `<g fill="#eee">${svgText("HOURS", { x: 640, y: 660, size: 64, anchor: "middle" })}</g>`,
  ].join("");
}
