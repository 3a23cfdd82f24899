import type { Site } from "./homes.ts";
import { feet } from "./place.ts";
import { planted } from "./planted.ts";
import { type Bay, bayBetween, beside } from "./spans.ts";
import type { Terrain } from "./terrain.ts";

/** What lies under a span of the demo. */
export type Way = {
  readonly bay: Bay;
  readonly surface: "road" | "driveway" | "rail" | "water" | "pedestrian" | "field";
  readonly name: string;
  readonly offsetM: number;
  readonly widthM: number;
  readonly surfaceM: number;
  /** False where nobody measured the surface: the file leaves it empty. */
  readonly levelled: boolean;
};

const drivewayCount = 9;

function isSpan(bay: Bay, span: { readonly from: string; readonly to: string }): boolean {
  return bay.from.tag === span.from && bay.to.tag === span.to;
}

/** Driveways of houses on the poles' side, spread over the route, none where another way is planned. */
function drivewaysOf(sites: readonly Site[], used: readonly Bay[], ground: Terrain): Way[] {
  const kept: readonly string[] = [planted.unlevelled.to, planted.lowPower.pole];
  const free = (bay: Bay) => !used.includes(bay) && !kept.includes(bay.from.tag) && !kept.includes(bay.to.tag);
  const inside = (site: Site) => site.alongM > feet(25) && site.alongM < site.bay.lengthM - feet(25);
  const open = sites.filter((site) => site.poleSide && site.kind === "home" && inside(site) && free(site.bay));
  const oneEach = open.filter((site, at) => open.findIndex((other) => other.bay === site.bay) === at);
  const stride = Math.max(1, Math.floor(oneEach.length / drivewayCount));
  return oneEach
    .filter((_, at) => at % stride === 0)
    .slice(0, drivewayCount)
    .map((site) => ({
      bay: site.bay,
      surface: "driveway",
      name: `Driveway of ${site.address}`,
      offsetM: site.alongM,
      widthM: feet(12),
      surfaceM: ground(beside(site.bay, site.alongM, 0)),
      levelled: true,
    }));
}

/** Roads, driveways, the railroad, the creek and the footpath, each under its span. */
export function waysOf(bays: readonly Bay[], sites: readonly Site[], ground: Terrain): readonly Way[] {
  const way = (
    [from, to]: readonly [string, string],
    surface: Way["surface"],
    name: string,
    [offsetFt, widthFt, riseFt]: readonly [number, number, number],
  ): Way => {
    const bay = bayBetween(bays, from, to);
    const offsetM = offsetFt === 0 ? bay.lengthM / 2 : feet(offsetFt);
    const surfaceM = ground(beside(bay, offsetM, 0)) + feet(riseFt);
    const levelled = !isSpan(bay, planted.unlevelled);
    return { bay, surface, name, offsetM, widthM: feet(widthFt), surfaceM, levelled };
  };
  const { lowDriveway, lowRail, unlevelled } = planted;
  const fixed = [
    way(["M-09", "A-01"], "road", "Tallow Road", [24, 24, 0.4]),
    way(["M-20", "M-21"], "road", "Quern Street", [22, 20, 0.3]),
    way(["M-14", "M-15"], "water", "Marrow Creek", [0, 18, -4]),
    way([lowRail.from, lowRail.to], "rail", "Single track railroad", [0, 12, 2.5]),
    way(["B-03", "B-04"], "pedestrian", "Footpath to the orchard", [70, 6, 0]),
    way(["M-28", "M-29"], "field", "Field gate", [0, 16, 0]),
    way([lowDriveway.from, lowDriveway.to], "driveway", "Driveway over the rise", [104, 12, 0.5]),
    way([unlevelled.from, unlevelled.to], "driveway", "Driveway not levelled", [60, 12, 0]),
  ];
  return [
    ...fixed,
    ...drivewaysOf(
      sites,
      fixed.map((each) => each.bay),
      ground,
    ),
  ];
}
