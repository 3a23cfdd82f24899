import { between, type Draw } from "./mulberry32.ts";
import { apartM, feet, type Point } from "./place.ts";
import { planted } from "./planted.ts";
import type { LineName } from "./poleLine.ts";
import { type Bay, bayBetween, beside, offBayM } from "./spans.ts";

/** A building or lot beside the line; its living units share it. */
export type Site = Point & {
  readonly address: string;
  readonly kind: "home" | "business" | "lot";
  readonly unitCount: number;
  /** Height of the drop's attachment above ground; null on an empty lot. */
  readonly attachM: number | null;
  readonly bay: Bay;
  readonly alongM: number;
  /** True on the side of the road the poles stand on. */
  readonly poleSide: boolean;
};

type Street = {
  readonly name: string;
  /** Side of the poles away from the road: +1 right of the line, -1 left. */
  readonly poleSideSign: 1 | -1;
  readonly firstNumber: number;
};

/** One side of a line; the poles stand on the side of the road that is theirs. */
type Side = { readonly line: LineName; readonly poleSide: boolean };

const lines = ["Main", "Lateral A", "Lateral B"] as const;

const streets: Readonly<Record<LineName, Street>> = {
  Main: { name: "Tallow Road", poleSideSign: -1, firstNumber: 100 },
  "Lateral A": { name: "Pennywort Lane", poleSideSign: 1, firstNumber: 10 },
  "Lateral B": { name: "Quern Street", poleSideSign: -1, firstNumber: 10 },
};

/** From the poles to the far edge of the road's right of way. */
const roadWidthM = feet(46);
const houseGapM = feet(52);
const lineGapM = feet(28);
/** Around the middle of a span without houses. */
const openLandM = feet(115);

/** Spans with no houses beside them: the creek's banks and the railroad's land. */
const openBays: readonly string[] = ["M-14", "M-24"];

function isOpenLand(point: Point, bays: readonly Bay[]): boolean {
  const open = bays.filter((bay) => openBays.includes(bay.from.tag) && bay.line === "Main");
  return open.some((bay) => apartM(beside(bay, bay.lengthM / 2, 0), point) < openLandM);
}

function drawKind(draw: Draw, line: LineName): Pick<Site, "kind" | "unitCount"> {
  const luck = draw();
  if (line === "Main" && luck < 0.07) return { kind: "business", unitCount: 1 };
  if (luck < 0.13) return { kind: "lot", unitCount: 1 };
  if (luck < 0.24) return { kind: "home", unitCount: 2 + Math.floor(draw() * 3) };
  return { kind: "home", unitCount: 1 };
}

function drawAttachM(draw: Draw, kind: Site["kind"]): number | null {
  if (kind === "lot") return null;
  return feet(Math.round(draw() < 0.6 ? between(draw, 9.5, 11.5) : between(draw, 14, 17)));
}

/** Whether a building here would stand on a road, too near a line of poles or another building, or on open land. */
function isCrowded(point: Point, line: LineName, bays: readonly Bay[], standing: readonly Site[]): boolean {
  return (
    isOpenLand(point, bays) ||
    standing.some((site) => apartM(site, point) < houseGapM) ||
    bays.some((bay) => offBayM(bay, point) < (bay.line === line ? lineGapM : roadWidthM + feet(20)))
  );
}

/** Distances along a line where lots begin, m. */
function lotStarts(draw: Draw, startM: number, endM: number): readonly number[] {
  const starts: number[] = [];
  for (let atM = startM; atM < endM; atM += feet(between(draw, 80, 116))) starts.push(atM);
  return starts;
}

/** The sites along one side of one line, from its start, that find room beside those already standing. */
function settleSide(draw: Draw, bays: readonly Bay[], { line, poleSide }: Side, standing: readonly Site[]): Site[] {
  const street = streets[line];
  const lineBays = bays.filter((bay) => bay.line === line);
  const endM = Math.max(...lineBays.map((bay) => bay.startM + bay.lengthM));
  const sites: Site[] = [];
  let number = street.firstNumber + (poleSide ? 1 : 2);
  for (const atM of lotStarts(draw, line === "Main" ? feet(30) : feet(170), endM - feet(15))) {
    number += 2 + 2 * Math.floor(draw() * 3);
    const bay = lineBays.find((candidate) => atM < candidate.startM + candidate.lengthM);
    if (!bay) throw new Error(`${line} ends before ${atM} m`);
    const setbackM = feet(between(draw, 30, 90));
    const rightM = (poleSide ? setbackM : -(roadWidthM + setbackM)) * street.poleSideSign;
    const alongM = atM - bay.startM;
    const point = beside(bay, alongM, rightM);
    const kind = drawKind(draw, line);
    const attachM = drawAttachM(draw, kind.kind);
    if (bay.lengthM < feet(20) || isCrowded(point, line, bays, [...standing, ...sites])) continue;
    sites.push({ ...point, address: `${number} ${street.name}`, ...kind, attachM, bay, alongM, poleSide });
  }
  return sites;
}

function farHouse(bays: readonly Bay[]): Site {
  const bay = bayBetween(bays, planted.farHouse.nearPole, "M-28");
  const point = beside(bay, 0, feet(planted.farHouse.setbackFt) * streets.Main.poleSideSign);
  return {
    ...point,
    address: "7 Orchard Track",
    kind: "home",
    unitCount: 1,
    attachM: feet(15),
    bay,
    alongM: 0,
    poleSide: true,
  };
}

/** Every building and lot of the demo. */
export function settle(draw: Draw, bays: readonly Bay[]): readonly Site[] {
  const sides = lines.flatMap((line) => [true, false].map((poleSide) => ({ line, poleSide })));
  const sites: Site[] = [];
  for (const side of sides) sites.push(...settleSide(draw, bays, side, sites));
  return [...sites, farHouse(bays)];
}
