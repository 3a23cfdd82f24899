import type { Mark, PaperPoint } from "./displayList.ts";
import { area, circle, rectangle, roundedOutline, stroke } from "./marks.ts";

/** Radius of a pole's ring, mm. */
export const poleRingMm = 1.5;
const partyBarMm = 1.5;
const mostParties = 5;

/**
 * A pole: an open ring, with a short bar for each other party on it.
 *
 * @param partyCount  parties besides us; five bars at most
 */
export function poleSymbol(centre: PaperPoint, partyCount: number): readonly Mark[] {
  const bars = Array.from({ length: Math.min(partyCount, mostParties) }, (_, index) => {
    const turn = Math.PI / 2 + ((index - (Math.min(partyCount, mostParties) - 1) / 2) * Math.PI) / 6;
    const at = (radius: number): PaperPoint => [
      centre[0] + radius * Math.cos(turn),
      centre[1] + radius * Math.sin(turn),
    ];
    return stroke("poles", "medium", [at(poleRingMm), at(poleRingMm + partyBarMm)]);
  });
  return [circle("poles", "bold", centre, poleRingMm, 1), ...bars];
}

/** A guy from its pole's ring to its anchor: a thin line with a bar across its end and a tooth into the ground. */
export function guySymbol(pole: PaperPoint, anchor: PaperPoint): readonly Mark[] {
  const turn = Math.atan2(anchor[1] - pole[1], anchor[0] - pole[0]);
  const at = ([x, y]: PaperPoint, along: number, left: number): PaperPoint => [
    x + along * Math.cos(turn) - left * Math.sin(turn),
    y + along * Math.sin(turn) + left * Math.cos(turn),
  ];
  return [
    stroke("poles", "thin", [at(pole, poleRingMm, 0), anchor]),
    stroke("poles", "bold", [at(anchor, 0, 1.1), at(anchor, 0, -1.1)]),
    area("poles", null, [at(anchor, 0, 0.6), at(anchor, 1.3, 0), at(anchor, 0, -0.6)], { fill: 0 }),
  ];
}

/** A building or sign by its outline; one beside the line is open, one that the line passes over is grey. */
export function structureSymbol(outline: readonly PaperPoint[], isBeside: boolean): readonly Mark[] {
  return [area("crossings", "medium", outline, { fill: isBeside ? 1 : 0.86 })];
}

/** A levelled point of the ground: a small triangle on its tip. */
export function levelSymbol([x, y]: PaperPoint): readonly Mark[] {
  return [
    area(
      "dimensions",
      "thin",
      [
        [x, y],
        [x + 1, y + 1.7],
        [x - 1, y + 1.7],
      ],
      { fill: 1 },
    ),
  ];
}

const tickMm = { width: 0.85, height: 1.15, pitch: 1.35, rank: 1.75 } as const;

/** One port on a terminal's face, rank from the top and place along it from 0. */
export type PortTick = {
  readonly rank: number;
  readonly along: number;
  readonly used: boolean;
  readonly reserved: boolean;
};

/** Size of a terminal's bar for its face, mm. */
export function terminalBarMm(ticks: readonly PortTick[]): { readonly width: number; readonly height: number } {
  const along = Math.max(0, ...ticks.map((one) => one.along)) + 1;
  const ranks = Math.max(0, ...ticks.map((one) => one.rank)) + 1;
  return { width: along * tickMm.pitch + 1.3, height: ranks * tickMm.rank + 0.9 };
}

/** Where a port's tick lies in a bar given by its lower left corner, mm. */
export function tickCentre(ticks: readonly PortTick[], [x, y]: PaperPoint, tick: PortTick): PaperPoint {
  const { height } = terminalBarMm(ticks);
  return [x + 0.65 + (tick.along + 0.5) * tickMm.pitch, y + height - 0.45 - (tick.rank + 0.5) * tickMm.rank];
}

/** A terminal's rounded bar by its lower left corner: a tick for each port, filled where used, struck through where reserved, hollow where spare. */
export function terminalBar(ticks: readonly PortTick[], corner: PaperPoint): readonly Mark[] {
  const { width, height } = terminalBarMm(ticks);
  const marks = ticks.flatMap((tick): Mark[] => {
    const [x, y] = tickCentre(ticks, corner, tick);
    const lower: PaperPoint = [x - tickMm.width / 2, y - tickMm.height / 2];
    const upper: PaperPoint = [x + tickMm.width / 2, y + tickMm.height / 2];
    const bar = rectangle("terminals", "fine", lower, tickMm.width, tickMm.height, { fill: tick.used ? 0 : 1 });
    return tick.reserved ? [bar, stroke("terminals", "fine", [lower, upper])] : [bar];
  });
  return [area("terminals", "bold", roundedOutline(corner, width, height, 0.9), { fill: 1 }), ...marks];
}

export const coilRadiusMm = 1.9;

/** A coil: a spiral of two and a half turns. */
export function coilSymbol(centre: PaperPoint): readonly Mark[] {
  const turnCount = 2.5;
  const pointCount = 48;
  const points = Array.from({ length: pointCount + 1 }, (_, index): PaperPoint => {
    const part = index / pointCount;
    const radius = coilRadiusMm * (1 - 0.78 * part);
    const turn = Math.PI / 2 - part * turnCount * 2 * Math.PI;
    return [centre[0] + radius * Math.cos(turn), centre[1] + radius * Math.sin(turn)];
  });
  return [stroke("slack", "thin", points)];
}

/** Size of the sign of a bond, mm. */
export const bondMm = { width: 2.8, height: 1.8 } as const;

/** A bond to ground: three bars one under the other, shorter and shorter, by their middle. */
export function bondSymbol([x, y]: PaperPoint): readonly Mark[] {
  return [1, 0.62, 0.24].map((part, index) => {
    const at = y + bondMm.height / 2 - (index * bondMm.height) / 2;
    return stroke("poles", "medium", [
      [x - (part * bondMm.width) / 2, at],
      [x + (part * bondMm.width) / 2, at],
    ]);
  });
}

export const closureSizeMm = { width: 7, height: 2.6 } as const;

/** A closure: a bar with a stroke across it, by its centre. */
export function closureSymbol([x, y]: PaperPoint): readonly Mark[] {
  const { width, height } = closureSizeMm;
  return [
    area("terminals", "bold", roundedOutline([x - width / 2, y - height / 2], width, height, 1.1), { fill: 1 }),
    stroke("terminals", "bold", [
      [x - 1.2, y - height / 2 - 0.9],
      [x + 1.2, y + height / 2 + 0.9],
    ]),
  ];
}

export const houseRoofMm = 1.7;
export const houseWallMm = 3.1;

/**
 * A house as big as its number: the number stands inside, a dot under the roof for each unit over one.
 *
 * @param beyond  true draws it dashed: its true place lies beyond the sheet
 */
export function houseSymbol([x, y]: PaperPoint, width: number, unitCount: number, beyond: boolean): readonly Mark[] {
  const bottom = y - (houseRoofMm + houseWallMm) / 2;
  const eaves = bottom + houseWallMm;
  const outline: readonly PaperPoint[] = [
    [x - width / 2, bottom],
    [x + width / 2, bottom],
    [x + width / 2, eaves],
    [x, eaves + houseRoofMm],
    [x - width / 2, eaves],
  ];
  const dots = Array.from({ length: Math.min(3, unitCount - 1) }, (_, index) =>
    circle("units", null, [x + (index - (Math.min(3, unitCount - 1) - 1) / 2) * 0.95, eaves + 0.45], 0.32, 0),
  );
  return [area("units", "thin", outline, { fill: 1, dashMm: beyond ? [0.8, 0.6] : [] }), ...dots];
}

/** A finding: error a filled diamond, warning an open triangle, note a ring. */
export function findingSymbol(severity: "error" | "warning" | "note", [x, y]: PaperPoint): readonly Mark[] {
  const r = 1.4;
  if (severity === "note") return [circle("findings", "bold", [x, y], 1.1, 1)];
  if (severity === "warning") {
    return [
      area(
        "findings",
        "bold",
        [
          [x - r, y - 1.1],
          [x + r, y - 1.1],
          [x, y + r],
        ],
        { fill: 1 },
      ),
    ];
  }
  return [
    area(
      "findings",
      "bold",
      [
        [x, y - r],
        [x + r, y],
        [x, y + r],
        [x - r, y],
      ],
      { fill: 0 },
    ),
  ];
}
