import type { Step } from "../../../core/edits/runSteps.ts";
import { cablePath, stationM } from "../../../core/plant/cablePath.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { RefKey } from "../../app/ref.ts";
import { offsetWords } from "../../panels/words.ts";
import { type Arranging, chosenIds } from "./arranging.ts";
import { notReady, type Wanted } from "./wanted.ts";
import { arrangeWords } from "./words.ts";

/** Hangs the chosen terminals of one cable at equal distances along it; the first and the last stay. */
export function spaceTerminals(plant: Plant, selection: readonly RefKey[], units: UnitSystem): Wanted {
  const ids = chosenIds(selection, "terminal");
  if (ids.length < 3) return notReady(arrangeWords.needsThree("terminals"));
  const [cableId = "", ...others] = new Set(ids.map((id) => plant.rowOf("terminal", id).cableId));
  if (others.length > 0) return notReady(arrangeWords.oneCable);
  const along = ids
    .map((id) => {
      const { spanId, offsetM } = plant.rowOf("terminal", id);
      return { id, atM: stationM(plant, cableId, spanId, offsetM) ?? Number.NaN };
    })
    .sort((a, b) => a.atM - b.atM);
  const [startM, endM] = [along[0]?.atM ?? Number.NaN, along.at(-1)?.atM ?? Number.NaN];
  const apartM = (endM - startM) / (along.length - 1);
  if (!(apartM > 0)) return notReady(arrangeWords.oneCable);
  const steps = along.slice(1, -1).flatMap(({ id }, i): Step[] => {
    const place = placeAt(plant, cableId, startM + apartM * (i + 1));
    return place ? [{ command: "terminal.move", input: { terminalId: id, ...place } }] : [];
  });
  return {
    isReady: true,
    label: arrangeWords.spaced(ids.length, "terminals"),
    words: arrangeWords.apart(ids.length, "terminals", formatLength(apartM, units, "height")),
    steps,
    table: "terminal",
  };
}

/** The place in a span so far from a cable's feed end. */
function placeAt(plant: Plant, cableId: string, atM: number) {
  const step = cablePath(plant, cableId).steps.find((one) => atM < one.startM + one.lengthM);
  if (!step) return null;
  const enteredM = atM - step.startM;
  return { spanId: step.spanId, offsetM: step.reversed ? step.lengthM - enteredM : enteredM };
}

/** Hangs the chosen terminals at one distance from their poles, each on the side where it is. */
export function alignTerminals(
  plant: Plant,
  selection: readonly RefKey[],
  { distance }: Arranging,
  units: UnitSystem,
): Wanted {
  const ids = chosenIds(selection, "terminal");
  if (ids.length === 0) return notReady(arrangeWords.needsTerminals);
  const typed = parseLengthM(distance, units);
  if (distance.trim() !== "" && !typed.ok) return notReady(`${typed.what} ${typed.mend}`);
  const fromPoleM = typed.ok ? typed.valueM : plant.settings().standoffM;
  if (!(fromPoleM > 0)) return notReady(arrangeWords.notPositive);
  const steps = ids.map((id): Step => {
    const { spanId } = plant.rowOf("terminal", id);
    const offsetM = terminalHang(plant, id).atFirstPole ? fromPoleM : plant.rowOf("span", spanId).lengthM - fromPoleM;
    return { command: "terminal.move", input: { terminalId: id, spanId, offsetM } };
  });
  const distanceWords = offsetWords(fromPoleM, units);
  return {
    isReady: true,
    label: arrangeWords.alignedLabel(ids.length, distanceWords),
    words: arrangeWords.aligned(ids.length, distanceWords),
    steps,
    table: "terminal",
  };
}

/** Turns the chosen terminals to the other side of their poles. */
export function turnTerminals(selection: readonly RefKey[]): Wanted {
  const ids = chosenIds(selection, "terminal");
  if (ids.length === 0) return notReady(arrangeWords.needsTerminals);
  return {
    isReady: true,
    label: arrangeWords.turnedLabel(ids.length),
    words: arrangeWords.turned(ids.length),
    steps: ids.map((terminalId) => ({ command: "terminal.turn", input: { terminalId } })),
    table: "terminal",
  };
}
