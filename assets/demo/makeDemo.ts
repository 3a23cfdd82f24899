import { type Cell, csvText, feetCell } from "./csvText.ts";
import { leaveShort, type StrandHeights, strandHeights } from "./heights.ts";
import { type Site, settle } from "./homes.ts";
import { type Draw, mulberry32 } from "./mulberry32.ts";
import { feet, lonLatOf, type Point, step } from "./place.ts";
import { planted } from "./planted.ts";
import { layPoles, type Stake } from "./poleLine.ts";
import { bayBetween, baysOf } from "./spans.ts";
import { rollingGround, type Terrain } from "./terrain.ts";
import { type Way, waysOf } from "./ways.ts";
import { type Stem, stemOf, wiresOf } from "./wires.ts";

/** The demo's four files as text, by file name without its ending. */
export type DemoFiles = {
  readonly poles: string;
  readonly addresses: string;
  readonly attachments: string;
  readonly crossings: string;
};

function placeCells(point: Point): readonly Cell[] {
  const { lonDeg, latDeg } = lonLatOf(point);
  return [
    [latDeg, 7],
    [lonDeg, 7],
  ];
}

function heightOf(heights: StrandHeights, stake: Stake): number {
  const heightM = heights.get(stake.tag);
  if (heightM === undefined) throw new Error(`${stake.tag} has no strand height`);
  return heightM;
}

function polesText(standing: readonly (readonly [Stake, Stem])[], ground: Terrain): string {
  const headings = [
    "tag",
    "latitude",
    "longitude",
    "line",
    "order",
    "from",
    "above_ground_ft",
    "class",
    "owner",
    "ground_ft",
  ];
  const rows = standing.map(([stake, stem]): readonly Cell[] => [
    stake.tag,
    ...placeCells(stake),
    stake.line,
    [stake.order, 0],
    stake.from,
    feetCell(stem.aboveGroundM, 1),
    `${stem.lengthFt}-${stem.classNumber}`,
    stem.owner,
    stake.tag === planted.unlevelled.to ? null : feetCell(ground(stake), 2),
  ]);
  return csvText(headings, rows);
}

/** Letters of the doors of a building with several units. */
const doors = ["A", "B", "C", "D"] as const;

function addressesText(sites: readonly Site[]): string {
  const headings = ["address", "latitude", "longitude", "kind", "building", "attach_height_ft"];
  const rows = sites.flatMap((site) => {
    const attach = site.attachM === null ? null : feetCell(site.attachM, 0);
    return doors.slice(0, site.unitCount).map((door, at): readonly Cell[] => {
      const several = site.unitCount > 1;
      const point = several ? step(site, site.bay.bearingRad, feet(12) * (at - (site.unitCount - 1) / 2), 0) : site;
      const address = several ? `${site.address}, Unit ${door}` : site.address;
      return [address, ...placeCells(point), site.kind, several ? site.address : "", attach];
    });
  });
  return csvText(headings, rows);
}

function attachmentsText(draw: Draw, standing: readonly (readonly [Stake, Stem])[], heights: StrandHeights): string {
  const headings = ["pole", "owner", "kind", "height_ft", "voltage_v"];
  const rows = standing.flatMap(([stake, stem]) =>
    wiresOf(draw, stake, stem, heightOf(heights, stake)).map((wire): readonly Cell[] => [
      wire.tag,
      wire.owner,
      wire.kind,
      feetCell(wire.heightM, 1),
      [wire.voltageV, 0],
    ]),
  );
  return csvText(headings, rows);
}

function crossingsText(ways: readonly Way[]): string {
  const headings = ["from_pole", "to_pole", "surface", "name", "offset_ft", "width_ft", "surface_elevation_ft"];
  const rows = ways.map((way): readonly Cell[] => [
    way.bay.from.tag,
    way.bay.to.tag,
    way.surface,
    way.name,
    feetCell(way.offsetM, 1),
    feetCell(way.widthM, 0),
    way.levelled ? feetCell(way.surfaceM, 2) : null,
  ]);
  return csvText(headings, rows);
}

/**
 * The files of the invented route "Marrow Bend", as a surveyor and a county would hand them over: US feet in the
 * headings, WGS-84 degrees. The same seed gives the same text.
 *
 * @param seed  any whole number
 */
export function makeDemo(seed: number): DemoFiles {
  const draw = mulberry32(seed);
  const stakes = layPoles(draw);
  const bays = baysOf(stakes);
  const ground = rollingGround(bayBetween(bays, "M-14", "M-15"));
  const sites = settle(draw, bays);
  const planned = waysOf(bays, sites, ground);
  const tags = stakes.map((stake) => stake.tag);
  const heights = strandHeights(tags, planned, ground);
  const standing = stakes.map((stake) => [stake, stemOf(draw, stake, heightOf(heights, stake))] as const);
  return {
    poles: polesText(standing, ground),
    addresses: addressesText(sites),
    attachments: attachmentsText(draw, standing, heights),
    crossings: crossingsText(leaveShort(planned, heights, ground)),
  };
}

/** The seed of the demo route the program makes on first run. */
export const demoSeed = 20;
