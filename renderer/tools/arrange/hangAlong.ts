import type { Step } from "../../../core/edits/runSteps.ts";
import { roomAtPole } from "../../../core/layout/hangingPoints.ts";
import { freshIds } from "../../../core/model/freshId.ts";
import { cablePath, cablesInSpan, poleStationM } from "../../../core/plant/cablePath.ts";
import { spansAtPole } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import type { RefKey } from "../../app/ref.ts";
import { usualModelId } from "../adding/clickWith.ts";
import { type Arranging, chosenIds } from "./arranging.ts";
import { notReady, type Wanted } from "./wanted.ts";
import { arrangeWords } from "./words.ts";

/** A pole along a cable with the spans the cable comes and goes by. */
type Stop = { readonly poleId: string; readonly before: string | null; readonly beyond: string | null };

/**
 * Hangs a terminal at every so many of the chosen poles, or of all poles of the chosen span's or terminal's cable, counted from
 * the feed end. A pole that has one already, or no room for one, gets none and is told.
 */
export function hangAlong(plant: Plant, selection: readonly RefKey[], asked: Arranging): Wanted {
  const modelId = asked.modelId ?? usualModelId(plant.route());
  if (modelId === null) return notReady(arrangeWords.noModel);
  const stops = stopsFor(plant, selection);
  if (!stops) return notReady(arrangeWords.needsPoles);
  const counted = stops.filter((_, i) => i >= asked.startAt - 1 && (i - asked.startAt + 1) % asked.everyNth === 0);
  const nextId = freshIds(plant.route(), "terminal");
  const { lengthM } = plant.rowOf("terminalModel", modelId);
  const steps: Step[] = [];
  let [servedCount, crowdedCount] = [0, 0];
  for (const stop of counted) {
    const spanId = sideWithRoom(plant, stop, asked.side, lengthM);
    if (hasTerminal(plant, stop.poleId)) servedCount += 1;
    else if (spanId === null) crowdedCount += 1;
    else {
      const input = { terminalId: nextId(), spanId, poleId: stop.poleId, terminalModelId: modelId };
      steps.push({ command: "terminal.hang", input });
    }
  }
  if (steps.length === 0) return notReady(arrangeWords.noneToHang(counted.length, servedCount, crowdedCount));
  return {
    isReady: true,
    label: arrangeWords.hungLabel(steps.length),
    words: arrangeWords.hung(steps.length, counted.length, servedCount, crowdedCount),
    steps,
    table: "terminal",
  };
}

/** The poles meant, along the cable that passes most of them. */
function stopsFor(plant: Plant, selection: readonly RefKey[]): readonly Stop[] | null {
  const poleIds = chosenIds(selection, "pole");
  if (poleIds.length > 1) {
    const passed = (cableId: string) => poleIds.filter((id) => poleStationM(plant, cableId, id) !== null).length;
    const cableIds = [...plant.route().cable.keys()].sort((a, b) => passed(b) - passed(a));
    const [cableId] = cableIds;
    if (cableId === undefined || passed(cableId) < 2) return null;
    return stopsAlong(plant, cableId).filter((stop) => poleIds.includes(stop.poleId));
  }
  const [terminalId] = chosenIds(selection, "terminal");
  const [spanId] = chosenIds(selection, "span");
  const cableId =
    terminalId === undefined ? cablesInSpan(plant, spanId ?? "")[0] : plant.rowOf("terminal", terminalId).cableId;
  return cableId === undefined ? null : stopsAlong(plant, cableId);
}

function stopsAlong(plant: Plant, cableId: string): readonly Stop[] {
  const { steps } = cablePath(plant, cableId);
  const [first] = steps;
  const start = first ? [{ poleId: first.inPoleId, before: null, beyond: first.spanId }] : [];
  return [
    ...start,
    ...steps.map((step, i) => ({
      poleId: step.outPoleId,
      before: step.spanId,
      beyond: steps[i + 1]?.spanId ?? null,
    })),
  ];
}

/** The span of the wanted side, else of the other one, where a terminal has room at its standard distance. */
function sideWithRoom(plant: Plant, stop: Stop, side: Arranging["side"], lengthM: number): string | null {
  const spans = side === "beyond" ? [stop.beyond, stop.before] : [stop.before, stop.beyond];
  const roomy = spans.find((id) => id !== null && roomAtPole(plant, id, stop.poleId, () => true).roomM >= lengthM);
  return roomy ?? null;
}

function hasTerminal(plant: Plant, poleId: string): boolean {
  return spansAtPole(plant, poleId).some((spanId) =>
    plant.where("terminal", "spanId", spanId).some((id) => terminalHang(plant, id).poleId === poleId),
  );
}
