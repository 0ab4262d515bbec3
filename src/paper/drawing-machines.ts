import type { Drawing, MachineKindId } from "../domain/vocabulary.ts";
import { circle, INK, PAPER } from "./circuit-symbols.ts";

const GREY = "#d9d9d9";

/** Shapes of machines: enough to say where on a machine of that kind a part is looked for. */
type Shape = "tractor" | "mower" | "loader" | "harvester" | "hand";

const shapes: Readonly<Record<MachineKindId, Shape>> = {
  "ride-on-mower": "mower",
  "zero-turn": "mower",
  "garden-tractor": "mower",
  "compact-tractor": "tractor",
  "utility-tractor": "tractor",
  "row-crop-tractor": "tractor",
  "old-tractor": "tractor",
  combine: "harvester",
  harvester: "harvester",
  sprayer: "harvester",
  "skid-steer": "loader",
  telehandler: "loader",
  "backhoe-loader": "loader",
  atv: "mower",
  "walk-behind": "hand",
  "pump-or-generator": "hand",
  other: "tractor",
};

const outline = (path: string, fill = PAPER) =>
  `<path d="${path}" fill="${fill}" stroke="${INK}" stroke-width="5" stroke-linejoin="round"/>`;

const wheel = (x: number, y: number, radius: number) =>
  circle(x, y, radius, GREY) + circle(x, y, radius / 3, PAPER);

/** Side views in a field 300 px wide and 220 px high, the front to the left. */
const views: Readonly<Record<Shape, string>> = {
  tractor:
    outline("M20 90H150V40H250V150H20Z") +
    outline("M164 54H236V90H164Z", GREY) +
    wheel(70, 160, 34) +
    wheel(220, 140, 62),
  mower:
    outline("M30 110H140L160 90H250V160H30Z") +
    outline("M190 40H206V90H190Z", GREY) +
    wheel(70, 165, 26) +
    wheel(220, 160, 38) +
    outline("M110 165H170V185H110Z", GREY),
  loader:
    outline("M60 80H130V30H220V150H60Z") +
    outline("M146 44H206V84H146Z", GREY) +
    outline("M8 150L40 120L60 60L72 66L52 128L30 160Z", GREY) +
    wheel(96, 160, 36) +
    wheel(220, 160, 36),
  harvester:
    outline("M60 40H120V20H280V150H60Z") +
    outline("M70 50H120V100H70Z", GREY) +
    outline("M4 130H60V168H4Z", GREY) +
    wheel(110, 150, 50) +
    wheel(240, 165, 32),
  hand:
    outline("M60 80H200V150H60Z") +
    outline("M90 50H160V80H90Z", GREY) +
    wheel(100, 170, 24) +
    outline("M200 100L280 40L288 50L206 122Z", GREY),
};

type Spots = Readonly<Record<Drawing, readonly [number, number]>>;

/** Where it usually is; the owner's manual knows better. */
const spots: Readonly<Record<Shape, Spots>> = {
  tractor: {
    "battery-posts": [40, 104],
    "earth-strap": [90, 138],
    "fuse-box": [152, 110],
    "stop-knob": [160, 74],
    solenoid: [128, 130],
  },
  mower: {
    "battery-posts": [214, 108],
    "earth-strap": [190, 140],
    "fuse-box": [170, 112],
    "stop-knob": [152, 104],
    solenoid: [180, 128],
  },
  loader: {
    "battery-posts": [206, 116],
    "earth-strap": [186, 138],
    "fuse-box": [140, 96],
    "stop-knob": [142, 70],
    solenoid: [170, 128],
  },
  harvester: {
    "battery-posts": [200, 120],
    "earth-strap": [180, 138],
    "fuse-box": [112, 88],
    "stop-knob": [104, 70],
    solenoid: [214, 98],
  },
  hand: {
    "battery-posts": [180, 132],
    "earth-strap": [150, 140],
    "fuse-box": [170, 100],
    "stop-knob": [190, 92],
    solenoid: [76, 120],
  },
};

/** A machine of that kind from the side, with a ring where the part is looked for. */
export function machineView(kind: MachineKindId, drawing: Drawing): string {
  const shape = shapes[kind];
  const [x, y] = spots[shape][drawing];
  const ring =
    `<circle cx="${x}" cy="${y}" r="20" fill="none" stroke="${PAPER}" stroke-width="14"/>` +
    `<circle cx="${x}" cy="${y}" r="20" fill="none" stroke="${INK}" stroke-width="7"/>`;
  return views[shape] + ring;
}
