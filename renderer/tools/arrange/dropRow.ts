import { evenDrops } from "../../../core/layout/evenDrops.ts";
import type { Drop } from "../../../core/model/tables.ts";
import { planeDistanceM } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { type RefKey, splitRef } from "../../app/ref.ts";
import { type Arranging, chosenIds } from "./arranging.ts";
import { notReady, type Wanted } from "./wanted.ts";
import { arrangeWords } from "./words.ts";

/** Where nothing is typed only the reach limits how much longer drops become: more than all drops of any route are long. */
const anyLengthM = 1e7;

/** Evens out how full the chosen terminals are, by moving drops between them. */
export function evenTerminals(
  plant: Plant,
  selection: readonly RefKey[],
  { longer }: Arranging,
  units: UnitSystem,
): Wanted {
  const terminalIds = chosenIds(selection, "terminal");
  if (terminalIds.length < 2) return notReady(arrangeWords.needsTwoTerminals);
  const typed = parseLengthM(longer, units);
  if (longer.trim() !== "" && !typed.ok) return notReady(`${typed.what} ${typed.mend}`);
  const extraDropM = typed.ok ? typed.valueM : anyLengthM;
  if (!(extraDropM >= 0)) return notReady(arrangeWords.notNegative);
  const rows = evenDrops(plant, terminalIds, extraDropM);
  const moved = rows.filter((one) => one.terminalId !== plant.rowOf("drop", one.id).terminalId);
  if (moved.length === 0) return notReady(arrangeWords.evenAlready);
  const present = terminalIds.map((id) => plant.where("drop", "terminalId", id).length);
  const wanted = terminalIds.map((id, index) => (present[index] ?? 0) + cameAndWent(plant, moved, id));
  return {
    isReady: true,
    label: arrangeWords.evenedLabel(terminalIds.length),
    words: arrangeWords.evened(moved.length, present, wanted, longerWords(plant, moved, units)),
    steps: [{ command: "drops.even", input: { terminalIds, extraDropM } }],
    table: "drop",
  };
}

/** Serves the chosen living units, and those of the chosen drops, from the one terminal chosen with them. */
export function serveFrom(plant: Plant, selection: readonly RefKey[], units: UnitSystem): Wanted {
  const [terminalId, ...others] = chosenIds(selection, "terminal");
  const dropIds = chosenDropIds(plant, selection);
  if (terminalId === undefined || others.length > 0 || dropIds.length === 0) return notReady(arrangeWords.needsUnits);
  const moved = dropIds
    .map((id) => plant.rowOf("drop", id))
    .flatMap((one) => (one.terminalId === terminalId ? [] : { ...one, terminalId }));
  if (moved.length === 0) return notReady(arrangeWords.servedAlready);
  const { name } = plant.rowOf("terminal", terminalId);
  return {
    isReady: true,
    label: arrangeWords.servedLabel(moved.length, name),
    words: arrangeWords.served(moved.length, name, longerWords(plant, moved, units)),
    steps: [{ command: "drops.move", input: { dropIds: moved.map((one) => one.id), terminalId } }],
    table: "drop",
  };
}

/** Drops among what is chosen, those of chosen living units with them. */
function chosenDropIds(plant: Plant, selection: readonly RefKey[]): readonly string[] {
  const ids = selection.map(splitRef).flatMap(({ table, id }) => {
    if (table === "drop") return plant.row("drop", id) ? [id] : [];
    return table === "livingUnit" ? plant.where("drop", "livingUnitId", id) : [];
  });
  return [...new Set(ids)];
}

function cameAndWent(plant: Plant, moved: readonly Drop[], terminalId: string): number {
  const came = moved.filter((one) => one.terminalId === terminalId).length;
  return came - moved.filter((one) => plant.rowOf("drop", one.id).terminalId === terminalId).length;
}

/** How much longer or shorter the moved drops become together. */
function longerWords(plant: Plant, moved: readonly Drop[], units: UnitSystem): string {
  const runM = (one: Drop): number =>
    planeDistanceM(terminalHang(plant, one.terminalId), plant.rowOf("livingUnit", one.livingUnitId));
  const longerM = moved.reduce((sum, one) => sum + runM(one) - runM(plant.rowOf("drop", one.id)), 0);
  const length = formatLength(Math.abs(longerM), units, "height");
  return longerM < 0 ? arrangeWords.shorterBy(length) : arrangeWords.longerBy(length);
}
