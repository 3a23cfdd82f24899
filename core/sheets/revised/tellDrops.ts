import type { RowChange } from "../../model/rowChange.ts";
import type { Drop } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { changedColumns } from "./columnWords.ts";
import { pairsOf } from "./pairs.ts";
import { type Between, type ChangeLine, lineAbout } from "./told.ts";

/** Drops strung, taken away or moved to another port. */
export function tellDrops(rows: readonly RowChange[], { before: was, after: is }: Between): readonly ChangeLine[] {
  return pairsOf(rows, "drop").flatMap(({ before, after }) => {
    const text = dropText(before, after, was, is);
    return text === null ? [] : [lineAbout("drop", after, before, text)];
  });
}

function dropText(before: Drop | null, after: Drop | null, was: Plant, is: Plant): string | null {
  const plant = after ? is : was;
  const drop = after ?? before;
  if (!drop) return null;
  const to = `Drop to ${plant.rowOf("livingUnit", drop.livingUnitId).address}`;
  if (!before) return `${to} added at ${portWords(is, drop)}`;
  if (!after) return `${to} taken away from ${portWords(was, drop)}`;
  const [old, now] = [portWords(was, before), portWords(is, after)];
  if (old !== now) return `${to} moved from ${old} to ${now}`;
  const others = changedColumns("drop", [{ ...before, terminalId: after.terminalId }, after], [was, is]);
  return others.length === 0 ? null : `${to}: ${others.join("; ")}`;
}

function portWords(plant: Plant, { terminalId, port }: Drop): string {
  return `${plant.rowOf("terminal", terminalId).name} port ${port}`;
}
