import type { Step } from "../../../core/edits/runSteps.ts";
import type { Row, TableName } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { fixedText } from "../../../core/units/fixedText.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { CellValue, Column, Explains, Reading, Write } from "./column.ts";
import type { Measure } from "./measures.ts";

/** What a column may ask to be different from the usual. */
type Wishes = {
  readonly widthPx?: number;
  /** May be left empty. */
  readonly mayBeEmpty?: boolean;
  readonly steps?: Write["steps"];
  readonly warn?: Write["warn"];
};

type Field<T extends TableName> = { readonly table: T; readonly column: keyof Row<T> & string };

const never = (): null => null;
const nothing = (): readonly string[] => [];

/** A column of words a person writes. */
export function words<T extends TableName>(field: Field<T>, heading: string, wishes: Wishes = {}): Column {
  const read = (text: string): Reading => {
    const plain = text.trim();
    if (plain === "" && wishes.mayBeEmpty === false) return { ok: false, what: `${heading} cannot be empty.` };
    return { ok: true, value: plain };
  };
  return {
    ...textColumn(field.column, heading, (plant, id) => rowValue(plant, field, id), wishes.widthPx ?? 140),
    write: writeOf(field, read, wishes),
  };
}

/** A column of a quantity, read with its unit or as a bare figure in the heading's unit. */
export function figures<T extends TableName>(
  field: Field<T>,
  heading: string,
  measure: Measure,
  wishes: Wishes = {},
): Column {
  return {
    ...quantity(field.column, heading, measure, (plant, id) => rowValue(plant, field, id), wishes.widthPx),
    write: writeOf(field, readFigure(measure, wishes.mayBeEmpty ?? false), wishes),
  };
}

/** A column of one of a few words. */
export function choice<T extends TableName>(
  field: Field<T>,
  heading: string,
  named: Readonly<Record<string, string>>,
  wishes: Wishes = {},
): Column {
  const read = (text: string): Reading => {
    const wanted = text.trim().toLowerCase();
    const found = Object.entries(named).find(
      ([value, name]) => name.toLowerCase() === wanted || value.toLowerCase() === wanted,
    );
    if (found) return { ok: true, value: found[0] };
    return { ok: false, what: `Choose one of: ${Object.values(named).join(", ")}.` };
  };
  return {
    ...textColumn(field.column, heading, (plant, id) => rowValue(plant, field, id), wishes.widthPx ?? 130),
    show: (value) => named[String(value)] ?? String(value ?? ""),
    write: { ...writeOf(field, read, wishes), choices: () => Object.values(named) },
  };
}

/** A column of yes or no. */
export function yesNo<T extends TableName>(field: Field<T>, heading: string, wishes: Wishes = {}): Column {
  const read = (text: string): Reading => {
    const wanted = text.trim().toLowerCase();
    if (["yes", "y", "true", "1"].includes(wanted)) return { ok: true, value: true };
    if (["no", "n", "false", "0"].includes(wanted)) return { ok: true, value: false };
    return { ok: false, what: "Write yes or no." };
  };
  return {
    ...textColumn(field.column, heading, (plant, id) => rowValue(plant, field, id), wishes.widthPx ?? 80),
    show: (value) => (value === true ? "yes" : "no"),
    write: { ...writeOf(field, read, wishes), choices: () => ["yes", "no"] },
  };
}

/** A column that names a row of another table by what people call it. */
export function reference<T extends TableName, U extends TableName>(
  field: Field<T>,
  heading: string,
  target: Field<U>,
  wishes: Wishes = {},
): Column {
  const nameOf = (plant: Plant, id: string): string => String(rowValue(plant, target, id) ?? "");
  const read: Write["read"] = (text, { plant }) => {
    const wanted = text.trim();
    const [only, other] = [...plant.route()[target.table].keys()].filter((id) => nameOf(plant, id) === wanted);
    if (only === undefined) return { ok: false, what: `No ${heading.toLowerCase()} is called "${wanted}".` };
    if (other !== undefined) return { ok: false, what: `Several are called "${wanted}".` };
    return { ok: true, value: only };
  };
  return {
    ...textColumn(field.column, heading, (plant, id) => rowValue(plant, field, id), wishes.widthPx ?? 140),
    show: (value, { plant }) => (typeof value === "string" ? nameOf(plant, value) : ""),
    write: {
      ...writeOf(field, read, wishes),
      choices: (plant) => [...plant.route()[target.table].keys()].slice(0, 500).map((id) => nameOf(plant, id)),
    },
  };
}

/** Words worked out from the route; nobody types them. */
export function told(key: string, heading: string, value: Column["value"], widthPx = 130): Column {
  return textColumn(key, heading, value, widthPx);
}

/** A figure worked out from the route; nobody types it. */
export function computed(
  key: string,
  heading: string,
  measure: Measure,
  value: Column["value"],
  widthPx?: number,
): Column {
  return quantity(key, heading, measure, value, widthPx);
}

/** A column whose cells say how their figure comes about. */
export function explained(column: Column, explains: Explains): Column {
  return { ...column, explains };
}

/** One command as the way a value is written. */
export function byCommand(
  command: string,
  input: (plant: Plant, rowId: string, value: CellValue) => object,
): Write["steps"] {
  return (plant, rowId, value): readonly Step[] => [{ command, input: input(plant, rowId, value) }];
}

function textColumn(key: string, heading: string, value: Column["value"], widthPx: number): Column {
  return {
    key,
    heading,
    unit: () => "",
    isFigure: false,
    widthPx,
    value,
    show: (cell) => String(cell ?? ""),
    figure: never,
    write: null,
  };
}

function quantity(key: string, heading: string, measure: Measure, value: Column["value"], widthPx = 100): Column {
  return {
    key,
    heading,
    unit: (units) => measure[units].unit,
    isFigure: true,
    widthPx,
    value,
    show: (cell, { units }) =>
      typeof cell === "number" ? fixedText(cell / measure[units].si, measure[units].decimalCount) : "",
    figure: (cell, units) => (typeof cell === "number" ? cell / measure[units].si : null),
    write: null,
  };
}

/** Reads a quantity as people write it; a bare figure is in the heading's unit. */
function readFigure(measure: Measure, mayBeEmpty: boolean): Write["read"] {
  return (text, { units }) => {
    const plain = text.trim();
    const { unit, si } = measure[units];
    if (plain === "") return mayBeEmpty ? { ok: true, value: null } : { ok: false, what: "A figure is needed." };
    const isBare = /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain);
    if (measure.isLength) {
      const parsed = parseLengthM(isBare ? `${plain} ${unit}` : plain, units);
      return parsed.ok ? { ok: true, value: parsed.valueM } : { ok: false, what: `${parsed.what} ${parsed.mend}` };
    }
    const bare = plain.toLowerCase().endsWith(unit.toLowerCase())
      ? plain.slice(0, plain.length - unit.length).trim()
      : plain;
    const isFigure = /^[-+]?(\d+\.?\d*|\.\d+)$/.test(bare);
    if (isFigure) return { ok: true, value: Number(bare) * si };
    return { ok: false, what: `"${plain}" is not a figure${unit === "" ? "" : ` in ${unit}`}.` };
  };
}

function writeOf<T extends TableName>(field: Field<T>, read: Write["read"], wishes: Wishes): Write {
  const plain = byCommand("row.set", (_, id, value) => ({ table: field.table, id, values: { [field.column]: value } }));
  return { read, steps: wishes.steps ?? plain, choices: nothing, warn: wishes.warn ?? never };
}

function rowValue<T extends TableName>(plant: Plant, { table, column }: Field<T>, id: string): CellValue {
  const value: unknown = Reflect.get(plant.row(table, id) ?? {}, column);
  const isCell = typeof value === "string" || typeof value === "number" || typeof value === "boolean";
  return isCell ? value : null;
}
