import type { Step } from "../../core/edits/runSteps.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { metresPerFoot } from "../../core/units/constants.ts";
import { type GroundTable, newDropCrossing, newGroundRow, newGuy } from "./newGroundRow.ts";

/** How far beside its neighbour a new row with a place is put, m: far enough to be seen apart. */
const besideM = 30 * metresPerFoot;

type AddedTable =
  | GroundTable
  | "pole"
  | "attachment"
  | "crossing"
  | "slack"
  | "closure"
  | "livingUnit"
  | "feed"
  | "cable";

/**
 * The step that adds a row beside another one, with the plainest values a person then changes.
 *
 * @param besideId  the row under the hand; null where the table is empty
 * @returns null where the new row would have nothing to be on, such as a crossing on a route without a span
 */
export function newRowStep(table: AddedTable, plant: Plant, newId: string, besideId: string | null): Step | null {
  const route = plant.route();
  const [firstSpan] = route.span.keys();
  const beside = besideId === null ? undefined : plant.row(table, besideId);
  const spanId = beside && "spanId" in beside ? beside.spanId : firstSpan;
  const offsetM = spanId === undefined ? 0 : plant.rowOf("span", spanId).lengthM / 2;
  const [firstCable] = spanId === undefined ? [] : plant.where("cableRun", "spanId", spanId);
  const cableId = firstCable === undefined ? undefined : plant.rowOf("cableRun", firstCable).cableId;
  const at = {
    eastM: (beside && "eastM" in beside ? beside.eastM : 0) + besideM,
    northM: beside && "northM" in beside ? beside.northM : 0,
  };
  const [firstPole] = route.pole.keys();
  const poleId = beside && "poleId" in beside ? beside.poleId : firstPole;
  switch (table) {
    case "pole":
      return { command: "pole.add", input: { ...barePole, poleId: newId, tag: `New ${newId}`, ...at } };
    case "livingUnit":
      return { command: "unit.add", input: { ...bareUnit, livingUnitId: newId, address: `New ${newId}`, ...at } };
    case "attachment": {
      if (poleId === undefined) return null;
      const { strandHeightM: heightM } = plant.settings();
      return { command: "attachment.add", input: { ...bareAttachment, attachmentId: newId, poleId, heightM } };
    }
    case "crossing":
      return spanId === undefined
        ? null
        : { command: "crossing.add", input: { ...bareCrossing, crossingId: newId, spanId, offsetM } };
    case "slack":
      return spanId === undefined || cableId === undefined
        ? null
        : {
            command: "slack.add",
            input: { ...bareCoil, slackId: newId, cableId, spanId, offsetM, storedM: plant.settings().accessSlackM },
          };
    case "closure":
      return spanId === undefined || cableId === undefined
        ? null
        : {
            command: "closure.add",
            input: { closureId: newId, name: `New ${newId}`, cableId, spanId, offsetM, note: "" },
          };
    case "groundPoint":
    case "structure":
    case "wireSag":
      return spanId === undefined ? null : newGroundRow(table, plant, newId, spanId);
    case "guy":
      return poleId === undefined ? null : newGuy(plant, newId, poleId);
    case "dropCrossing": {
      const livingUnitId = beside && "livingUnitId" in beside ? beside.livingUnitId : [...route.livingUnit.keys()][0];
      return livingUnitId === undefined ? null : newDropCrossing(newId, livingUnitId);
    }
    case "cable": {
      const along = beside && "cableTypeId" in beside ? beside : [...route.cable.values()][0];
      if (!along) return null;
      const { id: alongCableId, cableTypeId } = along;
      return { command: "cable.lash", input: { cableId: newId, name: `New ${newId}`, cableTypeId, alongCableId } };
    }
    case "feed": {
      const { opticalClassId } = plant.settings();
      return { command: "feed.add", input: { ...bareFeed, feedId: newId, name: `New ${newId}`, opticalClassId } };
    }
  }
}

const barePole = {
  groundM: null,
  aboveGroundM: null,
  poleClass: "",
  owner: "",
  line: "",
  order: 0,
  terminalAllowed: true,
  note: "",
};
const bareUnit = { kind: "home", building: "", attachHeightM: null, groundM: null, note: "" };
const bareAttachment = { owner: "", kind: "communication", voltageV: 0, note: "", bonded: false };
const bareCrossing = { name: "", surface: "driveway", widthM: 10 * metresPerFoot, surfaceM: null };
const bareCoil = { kind: "storage", terminalId: null };
const bareFeed = { hubSplitCount: 1, upstreamLossDb: 0, upstreamM: 0 };
