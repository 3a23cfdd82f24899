import { z } from "zod";
import { lineWeightsMm } from "../../core/model/lineWeights.ts";
import { references } from "../../core/model/references.ts";
import type { Route } from "../../core/model/route.ts";
import { type TableName, tables } from "../../core/model/tables.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { quantityKind, quantityText, readQuantity } from "./quantity.ts";
import { chosenNone, markWords, unitWords, valueWords, wrongWords } from "./words.ts";

export type Cell = string | number | boolean | null;

/** How a column is edited: by typing a figure or words, or by choosing. */
export type ColumnForm =
  | { readonly kind: "figure" | "words" }
  | { readonly kind: "choice"; readonly options: readonly { readonly value: string; readonly words: string }[] };

/** The option that stands for no row. */
const none = "";

/** What a choice gives the column. */
export function chosenCell(option: string): Cell {
  return option === none ? null : option;
}

/** How a column of a table is edited in this route. */
export function columnForm(route: Route, table: TableName, column: string, value: Cell): ColumnForm {
  const target = Object.entries<TableName>(references[table]).find(([name]) => name === column)?.[1];
  if (target) {
    const rows = [...route[target].values()].map((row) => ({ value: row.id, words: nameOf(row) }));
    const unchosen = mayBeNone(table, column)
      ? [{ value: none, words: table === "settings" ? chosenNone : unitWords.none }]
      : [];
    return { kind: "choice", options: [...unchosen, ...rows] };
  }
  const options = listOf(columnSchema(table, column));
  if (options)
    return { kind: "choice", options: options.map((one) => ({ value: one, words: choiceWords(column, one) })) };
  return { kind: typeof value === "number" || isFigure(columnSchema(table, column)) ? "figure" : "words" };
}

/** A value as its field shows it. */
export function cellText(column: string, value: Cell, units: UnitSystem): string {
  return typeof value === "number" ? quantityText(value, quantityKind(column), units) : String(value ?? "");
}

type ReadCell = { readonly ok: true; readonly value: Cell } | { readonly ok: false; readonly what: string };

/** Reads what was typed and holds it against the table's own schema. */
export function readCell(
  table: TableName,
  column: string,
  form: ColumnForm,
  text: string,
  units: UnitSystem,
): ReadCell {
  const mayBeEmpty = columnSchema(table, column) instanceof z.ZodNullable;
  if (form.kind === "figure" && mayBeEmpty && text.trim() === "") return { ok: true, value: null };
  const read: ReadCell =
    form.kind === "figure"
      ? readQuantity(text, quantityKind(column), units)
      : { ok: true, value: text === "" && mayBeNone(table, column) ? null : text };
  if (!read.ok) return read;
  const checked = columnSchema(table, column)?.safeParse(read.value);
  if (checked?.success !== false) return read;
  return { ok: false, what: wrongWords.notHere(form.kind === "figure", limitWords(checked.error.issues[0])) };
}

function mayBeNone(table: TableName, column: string): boolean {
  return columnSchema(table, column)?.safeParse(null).success === true;
}

function limitWords(issue: z.core.$ZodIssue | undefined): string {
  switch (issue?.code) {
    case "too_small":
      return issue.origin === "string" ? wrongWords.empty : wrongWords.least(issue.inclusive === true, issue.minimum);
    case "too_big":
      return issue.origin === "string" ? wrongWords.long(issue.maximum) : wrongWords.most(issue.maximum);
    case "invalid_type":
      return wrongWords.whole;
    default:
      return wrongWords.unknown;
  }
}

/** Whether a column holds a figure, though it may be empty. */
function isFigure(schema: z.ZodType | undefined): boolean {
  return (schema instanceof z.ZodNullable ? schema.unwrap() : schema) instanceof z.ZodNumber;
}

function columnSchema(table: TableName, column: string): z.ZodType | undefined {
  return Object.entries<z.ZodType>(tables[table].shape).find(([name]) => name === column)?.[1];
}

function listOf(schema: z.ZodType | undefined): readonly string[] | null {
  const options: unknown = schema ? Reflect.get(schema, "options") : null;
  return Array.isArray(options) ? options.map(String) : null;
}

function choiceWords(column: string, value: string): string {
  if (column in lineWeightsMm) return `${value} mm`;
  if (column === "unitSystem") return value === "us" ? unitWords.us : unitWords.metric;
  const mark = Object.entries(markWords).find(([name]) => column === "basisMark" && name === value)?.[1];
  return mark ?? valueWords(value);
}

/** What a row is called in a list. */
export function nameOf(row: object): string {
  const system: unknown = Reflect.get(row, "system");
  const name: unknown =
    Reflect.get(row, "name") ?? Reflect.get(row, "surface") ?? Reflect.get(row, "part") ?? Reflect.get(row, "load");
  const condition: unknown = Reflect.get(row, "condition");
  return [system, name, condition === "any" ? null : condition]
    .filter((one) => typeof one === "string")
    .map((one) => plainName(String(one)))
    .join(" ");
}

function plainName(text: string): string {
  return /^[a-z]+[A-Z]/.test(text) ? valueWords(text) : text;
}
