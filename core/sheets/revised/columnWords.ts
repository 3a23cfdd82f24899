import { references } from "../../model/references.ts";
import { type Row, type TableName, tables } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { degFromRad } from "../../units/angle.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatForce } from "../../units/formatForce.ts";
import { formatLength } from "../../units/formatLength.ts";
import { formatLossDb } from "../../units/formatLossDb.ts";
import { formatTemperature } from "../../units/formatTemperature.ts";
import { formatWeightPerLength } from "../../units/formatWeightPerLength.ts";
import { significantText } from "../../units/significantText.ts";
import { subjectWords } from "../subjectWords.ts";

/** Columns whose names do not say on their own what they are. */
const named: Readonly<Record<string, string>> = {
  heightM: "height",
  offsetM: "distance from the first pole",
  eastM: "east",
  northM: "north",
  groundM: "ground",
  strandSectionId: "strand",
  attachHeightM: "attachment at the house",
  sequence: "place along the cable",
  checkedBy: "checked by",
  newLineMm: "lines of what is new",
  existingLineMm: "lines of what is there",
  dimensionLineMm: "lines of dimensions",
  markLineMm: "lines of marks",
  frameLineMm: "lines of frame and tables",
};

/** Letters of written words that are told. */
const mostWritten = 60;

/** Columns people call a row by. */
const names: ReadonlySet<string> = new Set(["tag", "name", "address"]);

/** Columns of the design itself that no drawing shows. */
const unprinted: ReadonlySet<string> = new Set(["id", "order", "line", "origin", "reason"]);

/** What was changed of a row, column by column: `height from 21 ft 0 in to 22 ft 6 in`. */
export function changedColumns<T extends TableName>(
  table: T,
  [before, after]: readonly [Row<T>, Row<T>],
  [was, is]: readonly [Plant, Plant],
): readonly string[] {
  const system = is.settings().unitSystem;
  return Object.keys(tables[table].shape).flatMap((column) => {
    const [old, now]: readonly unknown[] = [Reflect.get(before, column), Reflect.get(after, column)];
    if (old === now || unprinted.has(column)) return [];
    if (names.has(column)) return [`renamed, before “${String(old)}”`];
    if (column === "logo") return [old === "" ? "logo added" : now === "" ? "logo taken away" : "another logo"];
    if (column === "pinned") return [now === true ? "pinned" : "no longer pinned"];
    const word = named[column] ?? plainName(column);
    const text = (plant: Plant, value: unknown) => valueText(plant, { table, column, value, system });
    return [`${word} from ${text(was, old)} to ${text(is, now)}`];
  });
}

/** A column's name without its unit, as words: aboveGroundM is "above ground". */
function plainName(column: string): string {
  const bare = column.replace(/Count$/, "s").replace(/(NPerM|DbPerKm|Frac|DegC|Rad|Db|Dbm|Pa|Nm|M|N|V|Id)$/, "");
  return bare.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

type Value = {
  readonly table: TableName;
  readonly column: string;
  readonly value: unknown;
  readonly system: "us" | "metric";
};

function valueText(plant: Plant, { table, column, value, system }: Value): string {
  if (value === null || value === "") return "none";
  if (typeof value === "boolean") return value ? "yes" : "no";
  const target = Object.entries<TableName>(references[table]).find(([name]) => name === column)?.[1];
  if (target !== undefined) return rowName(plant, target, String(value));
  if (column.endsWith("Mm")) return `${String(value)} mm`;
  if (typeof value !== "number") return quoted(String(value));
  if (column.endsWith("NPerM")) return formatWeightPerLength(value, system);
  if (column.endsWith("Count")) return fixedText(value, 0);
  if (column.endsWith("DegC")) return formatTemperature(value, system);
  if (column.endsWith("Rad")) return `${fixedText(degFromRad(value), 0)}°`;
  if (column.endsWith("Frac")) return `${fixedText(value * 100, 1)} %`;
  if (column.endsWith("Db")) return formatLossDb(value);
  if (/[a-z]N$/.test(column)) return formatForce(value, system);
  if (/[a-z]M$/.test(column)) return formatLength(value, system, "height");
  return significantText(value, 4);
}

/** Words somebody wrote, of long ones how they begin. */
function quoted(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return `“${line.length > mostWritten ? `${line.slice(0, mostWritten - 1)}…` : line}”`;
}

function rowName(plant: Plant, table: TableName, id: string): string {
  const row = plant.row(table, id);
  if (!row) return "none";
  return "name" in row && row.name !== "" ? row.name : subjectWords(plant, { table, id });
}
