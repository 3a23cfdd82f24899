import { z } from "zod";
import { type Row, type TableName, tableNames, tables } from "../core/model/tables.ts";
import type { SqlValue } from "./driver.ts";

/** One field of a row and the column that keeps it. */
type Column = {
  readonly key: string;
  readonly name: string;
  readonly type: "TEXT" | "INTEGER" | "REAL";
  readonly isBoolean: boolean;
  readonly nullable: boolean;
};

/** How one table of the model lies in the file, with the statements for its rows. */
export type Shape = {
  readonly table: TableName;
  /** Its name in SQL, without quotes. */
  readonly name: string;
  readonly columns: readonly Column[];
  /** All rows, oldest first, columns in the order of `columns`. */
  readonly selectAll: string;
  readonly selectOne: string;
  readonly insert: string;
  /** Every column, then the id once more. */
  readonly update: string;
  readonly remove: string;
};

/** The name SQL knows a table or field by: offsetM is offset_m. */
export function sqlName(name: string): string {
  return name.replace(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);
}

/** The shape of a table of the model. */
export function shapeOf(table: TableName): Shape {
  return shapes[table];
}

/** A row's values in the order of the table's columns. */
export function encodeRow(table: TableName, row: Row<TableName>): SqlValue[] {
  const fields: Readonly<Record<string, string | number | boolean | null>> = row;
  return shapes[table].columns.map(({ key }) => {
    const value = fields[key] ?? null;
    return typeof value === "boolean" ? Number(value) : value;
  });
}

/** The row that stands in these values; not yet checked against its schema. */
export function decodeRow(columns: readonly Column[], values: readonly SqlValue[]): Record<string, unknown> {
  const row: Record<string, unknown> = {};
  for (let i = 0; i < columns.length; i++) {
    const column = columns[i];
    const value = values[i];
    // What is neither 0 nor 1 stays as it is, for the schema to refuse.
    if (column) row[column.key] = column.isBoolean && (value === 0 || value === 1) ? value === 1 : value;
  }
  return row;
}

function columnOf(key: string, field: unknown): Column {
  const nullable = field instanceof z.ZodNullable;
  const inner: unknown = nullable ? field.unwrap() : field;
  const base = { key, name: sqlName(key), nullable, isBoolean: inner instanceof z.ZodBoolean };
  if (base.isBoolean) return { ...base, type: "INTEGER" };
  if (inner instanceof z.ZodNumber) return { ...base, type: inner.isInt ? "INTEGER" : "REAL" };
  if (inner instanceof z.ZodString || inner instanceof z.ZodEnum || inner instanceof z.ZodLiteral) {
    return { ...base, type: "TEXT" };
  }
  throw new Error(`no column can keep the field ${key}`);
}

function shapeFrom(table: TableName): Shape {
  const columns = Object.entries(tables[table].shape).map(([key, field]) => columnOf(key, field));
  const name = sqlName(table);
  const names = columns.map((column) => `"${column.name}"`).join(", ");
  const places = columns.map(() => "?").join(", ");
  const settings = columns.map((column) => `"${column.name}" = ?`).join(", ");
  return {
    table,
    name,
    columns,
    selectAll: `SELECT ${names} FROM "${name}" ORDER BY rowid`,
    selectOne: `SELECT ${names} FROM "${name}" WHERE id = ?`,
    insert: `INSERT INTO "${name}" (${names}) VALUES (${places})`,
    update: `UPDATE "${name}" SET ${settings} WHERE id = ?`,
    remove: `DELETE FROM "${name}" WHERE id = ?`,
  };
}

const shapes = Object.fromEntries(tableNames.map((table) => [table, shapeFrom(table)])) as Record<TableName, Shape>; // fromEntries forgets the keys
