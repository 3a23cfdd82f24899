import type { Step } from "../../core/edits/runSteps.ts";
import { groundAtM, groundLine } from "../../core/plant/groundLine.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { turnAtPole } from "../../core/plant/poleGuys.ts";
import { strandAtPole } from "../../core/plant/strandHeight.ts";
import { metresPerFoot } from "../../core/units/constants.ts";

/** Tables of what lies under and beside the line and what holds its poles. */
export type GroundTable = "groundPoint" | "structure" | "wireSag" | "guy" | "dropCrossing";

const feet = (count: number): number => count * metresPerFoot;

/** A new row under or beside a span, at its middle, as flat and as far off as it can be. */
export function newGroundRow(
  table: "groundPoint" | "structure" | "wireSag",
  plant: Plant,
  id: string,
  spanId: string,
): Step {
  const { lengthM } = plant.rowOf("span", spanId);
  const offsetM = lengthM / 2;
  if (table === "groundPoint") {
    const ground = groundLine(plant, spanId);
    const groundM = ground.kind === "known" ? groundAtM(ground, offsetM) : 0;
    return { command: "groundPoint.add", input: { groundPointId: id, spanId, offsetM, groundM } };
  }
  if (table === "wireSag") {
    const sagM = plant.settings().otherWireSagFrac * lengthM || feet(1);
    return { command: "wireSag.add", input: { wireSagId: id, spanId, owner: "", kind: "communication", sagM } };
  }
  const shape = {
    kind: "building",
    lengthM: feet(30),
    besideM: feet(20),
    side: "left",
    heightM: feet(15),
    bottomM: null,
  };
  return { command: "structure.add", input: { structureId: id, spanId, name: "", offsetM, ...shape } };
}

/** A new guy against the pull of the strand at its pole, as far out as the strand is high. */
export function newGuy(plant: Plant, id: string, poleId: string): Step {
  const { heightM } = strandAtPole(plant, poleId);
  const directionRad = turnAtPole(plant, poleId)?.guyRad ?? 0;
  const { strandTypeId } = plant.settings();
  const guy = { poleId, strandTypeId, heightM, leadM: heightM, directionRad, anchorN: null, note: "" };
  return { command: "guy.add", input: { guyId: id, ...guy } };
}

/** A new driveway before a building. */
export function newDropCrossing(id: string, livingUnitId: string): Step {
  const way = { name: "", surface: "homeDriveway", fromUnitM: feet(20), widthM: feet(10), surfaceM: null };
  return { command: "dropCrossing.add", input: { dropCrossingId: id, livingUnitId, ...way } };
}
