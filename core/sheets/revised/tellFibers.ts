import type { RowChange } from "../../model/rowChange.ts";
import type { Plant } from "../../plant/plant.ts";
import { kindAndName } from "../tradeWords.ts";
import { pairsOf } from "./pairs.ts";
import { type Between, type ChangeLine, lineAbout } from "./told.ts";

/** Terminals that take other fibers than before, and cables whose other fibers are used otherwise. */
export function tellFibers(rows: readonly RowChange[], { before, after }: Between): readonly ChangeLine[] {
  const uses = pairsOf(rows, "fiberUse").flatMap((one) => [one.before ?? [], one.after ?? []].flat());
  const names = new Set(
    uses.flatMap(({ terminalId }) =>
      terminalId === null
        ? []
        : ((after.row("terminal", terminalId) ?? before.row("terminal", terminalId))?.name ?? []),
    ),
  );
  const ofTerminals = [...names].flatMap((name) => terminalLine(name, before, after));
  const loose = new Map<string, Set<number>>();
  for (const { cableId, fiber, terminalId } of uses)
    if (terminalId === null) loose.set(cableId, (loose.get(cableId) ?? new Set()).add(fiber));
  const ofCables = [...loose].map(([id, fibers]) => {
    const cable = after.row("cable", id) ?? before.row("cable", id);
    return lineAbout(
      "cable",
      after.row("cable", id) ?? null,
      { id },
      `${kindAndName("Cable", cable?.name ?? id)}: fiber ${listed([...fibers])} used otherwise`,
    );
  });
  return [...ofTerminals, ...ofCables];
}

/** Nothing where the terminal itself is new or gone: that says enough. */
function terminalLine(name: string, before: Plant, after: Plant): readonly ChangeLine[] {
  const [was, is] = [before, after].map((plant) => plant.where("terminal", "name", name)[0]);
  if (was === undefined || is === undefined) return [];
  const [old, now] = [fibersOf(before, was), fibersOf(after, is)];
  if (old === now) return [];
  return [lineAbout("terminal", { id: is }, null, `Terminal ${name} takes fiber ${now}; before, ${old}`)];
}

function fibersOf(plant: Plant, terminalId: string): string {
  const uses = plant.where("fiberUse", "terminalId", terminalId).map((id) => plant.rowOf("fiberUse", id));
  const cables = [...new Set(uses.map((one) => one.cableId))].sort();
  const texts = cables.map((id) => {
    const fibers = uses.filter((one) => one.cableId === id).map((one) => one.fiber);
    return `${listed(fibers)} of ${plant.rowOf("cable", id).name}`;
  });
  return texts.length === 0 ? "none" : texts.join(" and ");
}

function listed(fibers: readonly number[]): string {
  return [...fibers].sort((a, b) => a - b).join(", ");
}
