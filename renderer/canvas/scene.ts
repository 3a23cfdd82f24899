import type { Route } from "../../core/model/route.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { boxOfBoth } from "./box.ts";
import { type CrossingMarks, crossingMarks } from "./crossingMarks.ts";
import { type DropMarks, openDropMarks } from "./dropMarks.ts";
import { type HouseMarks, houseMarks } from "./houseMarks.ts";
import {
  type ClosureMark,
  type CoilMark,
  type HungMarks,
  openClosureMarks,
  openCoilMarks,
  openTerminalMarks,
  type TerminalMark,
} from "./hungMarks.ts";
import { otherPartiesByPole } from "./otherParties.ts";
import { type PinMarks, pinMarks } from "./pinMarks.ts";
import { type DrawnAs, type Places, placesOf } from "./places.ts";
import { openPoleMarks, type PoleMarks } from "./poleMarks.ts";
import {
  type GroundMark,
  type GuyMark,
  groundMarks,
  guyMarks,
  type StructureMark,
  structureMarks,
} from "./siteMarks.ts";
import { cablesBySpan, openSpanMarks, type SpanMarks } from "./spanMarks.ts";
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
  readonly pins: PinMarks;
  readonly places: Places;
  /** Ground the route covers; null where it has neither poles nor living units. */
  readonly box: Box | null;
};

/** Makes scenes of the route as a plant holds it; a kind is made anew only when a table it is drawn from has changed. */
export type SceneMaker = (route: Route, drawnAs?: DrawnAs) => Scene;

/** A maker of scenes that keeps what an edit left alone. */
export function openSceneMaker(plant: Plant): SceneMaker {
  const parties = kept(otherPartiesByPole);
  const cables = kept(cablesBySpan);
  const poles = kept(openPoleMarks(plant));
  const spans = kept(openSpanMarks(plant));
  const crossings = kept((spanPart: SpanMarks) => crossingMarks(plant, spanPart));
  const terminals = kept(openTerminalMarks(plant));
  const coils = kept(openCoilMarks(plant));
  const closures = kept(openClosureMarks(plant));
  const guys = kept((places: Places) => guyMarks(plant, places));
  const structures = kept((spanPart: SpanMarks) => structureMarks(plant, spanPart));
  const groundPoints = kept((spanPart: SpanMarks) => groundMarks(plant, spanPart));
  const houses = kept((places: Places) => houseMarks(plant, places));
  const drops = kept(openDropMarks(plant));
  const pins = kept(pinMarks);
  return (r, drawnAs = "ground") => {
    const places = placesOf(plant, drawnAs);
    const there = parties([r.attachment], r.attachment);
    const running = cables([r.cableRun], r.cableRun);
    const spanPart = spans([r.span, r.pole, places, there, running], places, there, running);
    const terminalPart = terminals([r.terminal, r.terminalModel, r.drop, r.splitter, r.slack, spanPart], spanPart);
    const polePart = poles([r.pole, places, there], places, there);
    const housePart = houses([r.livingUnit, places], places);
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
      pins: pins([r.terminal, r.drop, r.pole], r),
      places,
      box: boxOfBoth(polePart.index.box, housePart.index.box),
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
