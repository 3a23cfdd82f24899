import type { Mark, PaperPoint } from "../sheets/paper/displayList.ts";
import { stroke } from "../sheets/paper/marks.ts";
import {
  closureSizeMm,
  closureSymbol,
  coilRadiusMm,
  coilSymbol,
  guySymbol,
  houseSymbol,
  levelSymbol,
  type PortTick,
  poleSymbol,
  terminalBar,
  terminalBarMm,
} from "../sheets/paper/symbols.ts";

/** A symbol of the sheets as a block: its origin is the true place of what it stands for, x along the strand. */
export type RouteBlock = {
  readonly name: string;
  readonly marks: readonly Mark[];
  /** What it covers, mm from its origin; labels keep off it. */
  readonly box: { readonly left: number; readonly bottom: number; readonly width: number; readonly height: number };
};

/** How far things hang off the strand, mm. */
const hangMm = 3;
const mostShown = { parties: 5, units: 4 } as const;
const houseMm = { width: 6, height: 4.8 } as const;

export function poleBlock(partyCount: number): RouteBlock {
  const shown = Math.min(partyCount, mostShown.parties);
  const box = { left: -1.8, bottom: -1.8, width: 3.6, height: shown > 0 ? 5 : 3.6 };
  return { name: numbered("POLE", shown), marks: poleSymbol([0, 0], shown), box };
}

/** The bar and tooth of an anchor, x away from the pole. */
export function anchorBlock(): RouteBlock {
  const [, ...anchor] = guySymbol([-10, 0], [0, 0]);
  return { name: "ANCHOR", marks: anchor, box: { left: -0.5, bottom: -1.2, width: 2, height: 2.4 } };
}

/** A terminal's bar under the strand, reaching along x from where it hangs. */
export function terminalBlock(ticks: readonly PortTick[]): RouteBlock {
  const { width, height } = terminalBarMm(ticks);
  const ranks = Math.max(0, ...ticks.map((one) => one.rank)) + 1;
  const corner: PaperPoint = [-1, -hangMm - height];
  const hangers = [-0.5, 0.5].map((x) =>
    stroke("terminals", "medium", [
      [x, 0],
      [x, -hangMm],
    ]),
  );
  return {
    name: `TERMINAL-${ticks.length}-${ranks}`,
    marks: [...hangers, ...terminalBar(ticks, corner)],
    box: { left: -1, bottom: corner[1], width, height: height + hangMm },
  };
}

/** A coil, drawn over the strand so that it stays clear of the terminal it feeds. */
export function coilBlock(): RouteBlock {
  const size = 2 * coilRadiusMm;
  const stem = stroke("slack", "thin", [
    [0, 0],
    [0, hangMm],
  ]);
  return {
    name: "COIL",
    marks: [stem, ...coilSymbol([0, hangMm + coilRadiusMm])],
    box: { left: -coilRadiusMm, bottom: 0, width: size, height: hangMm + size },
  };
}

export function closureBlock(): RouteBlock {
  const { width, height } = closureSizeMm;
  const stem = stroke("terminals", "medium", [
    [0, 0],
    [0, -hangMm],
  ]);
  return {
    name: "CLOSURE",
    marks: [stem, ...closureSymbol([0, -hangMm - height / 2])],
    box: { left: -width / 2, bottom: -hangMm - height - 0.9, width, height: hangMm + height + 0.9 },
  };
}

export function houseBlock(unitCount: number): RouteBlock {
  const shown = Math.min(unitCount, mostShown.units);
  return {
    name: numbered("HOUSE", shown > 1 ? shown : 0),
    marks: houseSymbol([0, 0], houseMm.width, shown, false),
    box: { left: -houseMm.width / 2, bottom: -houseMm.height / 2, ...houseMm },
  };
}

export function levelBlock(): RouteBlock {
  return { name: "LEVEL", marks: levelSymbol([0, 0]), box: { left: -1, bottom: 0, width: 2, height: 1.7 } };
}

function numbered(name: string, count: number): string {
  return count === 0 ? name : `${name}-${count}`;
}
