import type { Route } from "../../core/model/route.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type CrossingMarks, crossingMarks } from "./crossingMarks.ts";
import {
  type ClosureMark,
  type CoilMark,
  closureMarks,
  coilMarks,
  type HungMarks,
  type TerminalMark,
  terminalMarks,
} from "./hungMarks.ts";
import { type DrawnAs, type Places, placesOf } from "./places.ts";
import { type PoleMarks, poleMarks } from "./poleMarks.ts";
import {
  type GroundMark,
  type GuyMark,
  groundMarks,
  guyMarks,
  type StructureMark,
  structureMarks,
} from "./siteMarks.ts";
import { type SpanMarks, spanMarks } from "./spanMarks.ts";
import { type DropMarks, dropMarks, type HouseMarks, houseMarks } from "./unitMarks.ts";
import type { Box } from "./viewport.ts";

/** Everything of a route made ready for drawing, kind by kind. */
export type Scene = {
  readonly poles: PoleMarks;
  readonly spans: SpanMarks;
  readonly crossings: CrossingMarks;
  readonly terminals: HungMarks<TerminalMark>;
  readonly coils: HungMarks<CoilMark>;
  readonly closures: HungMarks<ClosureMark>;
  readonly guys: HungMarks<GuyMark>;
  readonly structures: HungMarks<StructureMark>;
  readonly groundPoints: HungMarks<GroundMark>;
  readonly houses: HouseMarks;
  readonly drops: DropMarks;
  readonly places: Places;
  /** Ground the route covers; null where it has neither poles nor living units. */
  readonly box: Box | null;
};

/** Makes scenes of the route as a plant holds it; a kind is made anew only when a table it is drawn from has changed. */
export type SceneMaker = (route: Route, drawnAs?: DrawnAs) => Scene;

/** A maker of scenes that keeps what an edit left alone. */
export function openSceneMaker(plant: Plant): SceneMaker {
  const poles = kept((places: Places) => poleMarks(plant, places));
  const spans = kept((places: Places) => spanMarks(plant, places));
  const crossings = kept((spanPart: SpanMarks) => crossingMarks(plant, spanPart));
  const terminals = kept((spanPart: SpanMarks) => terminalMarks(plant, spanPart));
  const coils = kept((spanPart: SpanMarks) => coilMarks(plant, spanPart));
  const closures = kept((spanPart: SpanMarks) => closureMarks(plant, spanPart));
  const guys = kept((places: Places) => guyMarks(plant, places));
  const structures = kept((spanPart: SpanMarks) => structureMarks(plant, spanPart));
  const groundPoints = kept((spanPart: SpanMarks) => groundMarks(plant, spanPart));
  const houses = kept((places: Places) => houseMarks(plant, places));
  let formerDrops: DropMarks | null = null;
  const drops = kept((t: HungMarks<TerminalMark>, h: HouseMarks) => {
    formerDrops = dropMarks(plant, t, h, formerDrops);
    return formerDrops;
  });
  const box = kept(coveredBox);
  return (r, drawnAs = "ground") => {
    const places = placesOf(plant, drawnAs);
    const spanPart = spans([r.span, r.pole, r.cableRun, r.attachment, places], places);
    const terminalPart = terminals([r.terminal, r.terminalModel, r.drop, r.splitter, r.slack, spanPart], spanPart);
    const polePart = poles([r.pole, r.attachment, places], places);
    const housePart = houses([r.livingUnit, r.drop, places], places);
    return {
      poles: polePart,
      spans: spanPart,
      crossings: crossings([r.crossing, spanPart, ...hangingTables(r)], spanPart),
      terminals: terminalPart,
      coils: coils([r.slack, spanPart], spanPart),
      closures: closures([r.closure, spanPart], spanPart),
      guys: guys([r.guy, r.pole, r.span, places], places),
      structures: structures([r.structure, spanPart], spanPart),
      groundPoints: groundPoints([r.groundPoint, spanPart], spanPart),
      houses: housePart,
      drops: drops([r.drop, terminalPart, housePart], terminalPart, housePart),
      places,
      box: box([polePart, housePart], polePart, housePart),
    };
  };
}

/** Tables that decide how high the line hangs over a crossing. */
function hangingTables(r: Route): readonly unknown[] {
  return [r.settings, r.strandSection, r.strandType, r.cable, r.cableType, r.loadingDistrict];
}

function kept<Args extends readonly unknown[], Part>(make: (...args: Args) => Part) {
  let former: { readonly from: readonly unknown[]; readonly part: Part } | null = null;
  return (from: readonly unknown[], ...args: Args): Part => {
    if (former?.from.every((one, i) => one === from[i])) return former.part;
    former = { from, part: make(...args) };
    return former.part;
  };
}

function coveredBox(poles: PoleMarks, houses: HouseMarks): Box | null {
  let [westM, southM, eastM, northM] = [Infinity, Infinity, -Infinity, -Infinity];
  const cover = (east: number, north: number): void => {
    westM = Math.min(westM, east);
    eastM = Math.max(eastM, east);
    southM = Math.min(southM, north);
    northM = Math.max(northM, north);
  };
  poles.eastM.forEach((east, i) => {
    cover(east, poles.northM[i] ?? 0);
  });
  for (const house of houses.marks) cover(house.eastM, house.northM);
  return westM <= eastM ? { westM, southM, eastM, northM } : null;
}
