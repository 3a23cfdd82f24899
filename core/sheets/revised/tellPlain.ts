import type { RowChange } from "../../model/rowChange.ts";
import type { Row, TableName } from "../../model/tables.ts";
import { planeDistanceM } from "../../plant/geometry.ts";
import { spanName } from "../../plant/names.ts";
import type { Plant } from "../../plant/plant.ts";
import { capital } from "../../units/capital.ts";
import { formatLength } from "../../units/formatLength.ts";
import { subjectWords } from "../subjectWords.ts";
import { changedColumns } from "./columnWords.ts";
import { type Pair, pairsOf } from "./pairs.ts";
import { moveWords } from "./tellHung.ts";
import { type Between, type ChangeLine, lineAbout } from "./told.ts";

/** Rows of a table that came, went or hold other figures; what hangs and what stands also as what moved. */
export function tellPlain<T extends TableName>(
  table: T,
  rows: readonly RowChange[],
  between: Between,
): readonly ChangeLine[] {
  return pairsOf(rows, table).flatMap((pair) =>
    textsOf(table, pair, between).map((text) => lineAbout(table, pair.after, pair.before, text)),
  );
}

function textsOf<T extends TableName>(table: T, { before, after }: Pair<T>, between: Between): readonly string[] {
  const { before: was, after: is } = between;
  if (!after) return before ? [`${nameOf(was, table, before)} taken away`] : [];
  const name = nameOf(is, table, after);
  if (!before) return [`${name} added`];
  const moved = movedText(before, after, between);
  const alike = moved === null ? before : { ...before, ...placeOf(after) };
  const others = changedColumns(table, [alike, after], [was, is]);
  return [
    ...(moved === null ? [] : [`${name} moved ${moved}`]),
    ...others.map((one) => (table === "settings" ? capital(one) : `${name}: ${one}`)),
  ];
}

function movedText(before: object, after: object, between: Between): string | null {
  if (isHung(before) && isHung(after)) return moveWords(before, after, between);
  if (!(isStanding(before) && isStanding(after))) return null;
  const farM = planeDistanceM(before, after);
  return farM === 0 ? null : formatLength(farM, between.after.settings().unitSystem, "height");
}

/** The columns that tell where a row hangs or stands. */
function placeOf(row: object): object {
  if (isHung(row)) return { spanId: row.spanId, offsetM: row.offsetM };
  return isStanding(row) ? { eastM: row.eastM, northM: row.northM } : {};
}

function isHung(row: object): row is { readonly id: string; readonly spanId: string; readonly offsetM: number } {
  return "spanId" in row && "offsetM" in row;
}

function isStanding(row: object): row is { readonly eastM: number; readonly northM: number } {
  return "eastM" in row && "northM" in row;
}

function nameOf<T extends TableName>(plant: Plant, table: T, row: Row<T>): string {
  const words = capital(ownName(plant, row) ?? subjectWords(plant, { table, id: row.id }));
  const spanId: unknown = Reflect.get(row, "spanId");
  return typeof spanId === "string" && plant.row("span", spanId) ? `${words}, span ${spanName(plant, spanId)}` : words;
}

/** A coil by its terminal, a waiver by its rule; null for what has a name of its own. */
function ownName(plant: Plant, row: object): string | null {
  if ("ruleId" in row && "subjects" in row) return `waiver of ${String(row.ruleId)}`;
  if (!("storedM" in row && "terminalId" in row)) return null;
  const terminal = typeof row.terminalId === "string" ? plant.row("terminal", row.terminalId) : undefined;
  return terminal ? `coil of terminal ${terminal.name}` : "storage coil";
}
