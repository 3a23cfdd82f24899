import type { Step } from "../../../core/edits/runSteps.ts";
import { evenChords } from "../../../core/plant/evenChords.ts";
import { farPoleId, type Point, planeDistanceM, spansAtPole } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { RefKey } from "../../app/ref.ts";
import { chosenIds } from "./arranging.ts";
import { notReady, type Wanted } from "./wanted.ts";
import { arrangeWords } from "./words.ts";

/** Moves the chosen poles along their own line until all spans between them are equally long; the first and the last stay. */
export function spacePoles(plant: Plant, selection: readonly RefKey[], units: UnitSystem): Wanted {
  const row = poleRow(plant, chosenIds(selection, "pole"));
  if (!row) return notReady(arrangeWords.oneLine);
  const places = evenChords(row.map((id) => plant.rowOf("pole", id)));
  const [first, second] = places ?? [];
  if (!places || !first || !second) return notReady(arrangeWords.tooSharp);
  const apart = formatLength(planeDistanceM(first, second), units, "height");
  return {
    isReady: true,
    label: arrangeWords.spaced(row.length, "poles"),
    words: arrangeWords.apart(row.length, "poles", apart),
    steps: moves(row, places),
    table: "pole",
  };
}

/** Moves the chosen poles square onto the straight line between the first and the last. */
export function linePoles(plant: Plant, selection: readonly RefKey[]): Wanted {
  const row = poleRow(plant, chosenIds(selection, "pole"));
  if (!row) return notReady(arrangeWords.oneLine);
  const points = row.map((id): Point => plant.rowOf("pole", id));
  const [from, to] = [points[0], points.at(-1)];
  const lengthM = from && to ? planeDistanceM(from, to) : 0;
  if (!from || !to || lengthM === 0) return notReady(arrangeWords.oneLine);
  const [east, north] = [(to.eastM - from.eastM) / lengthM, (to.northM - from.northM) / lengthM];
  const places = points.map((one) => {
    const alongM = (one.eastM - from.eastM) * east + (one.northM - from.northM) * north;
    return { eastM: from.eastM + alongM * east, northM: from.northM + alongM * north };
  });
  return {
    isReady: true,
    label: arrangeWords.inLineLabel(row.length),
    words: arrangeWords.inLine(row.length),
    steps: moves(row, places),
    table: "pole",
  };
}

/** The poles in the order of the line that spans make of them; null where they do not make one line, end to end. */
function poleRow(plant: Plant, poleIds: readonly string[]): readonly string[] | null {
  const chosen = new Set(poleIds);
  const nextTo = (id: string): readonly string[] =>
    spansAtPole(plant, id)
      .map((spanId) => farPoleId(plant, spanId, id))
      .filter((far) => chosen.has(far));
  const start = poleIds.find((id) => nextTo(id).length === 1);
  if (poleIds.length < 3 || start === undefined) return null;
  const row: string[] = [];
  for (let at: string | undefined = start; at !== undefined; ) {
    row.push(at);
    const ahead: readonly string[] = nextTo(at).filter((id) => !row.includes(id));
    if (ahead.length > 1) return null;
    at = ahead[0];
  }
  return row.length === chosen.size ? row : null;
}

function moves(row: readonly string[], places: readonly Point[]): readonly Step[] {
  return row.slice(1, -1).flatMap((poleId, i): Step[] => {
    const to = places[i + 1];
    return to ? [{ command: "pole.move", input: { poleId, eastM: to.eastM, northM: to.northM } }] : [];
  });
}
