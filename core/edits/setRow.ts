import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { type TableName, tables } from "../model/tables.ts";
import { missing } from "./missing.ts";
import { strayReference } from "./tableRow.ts";

/** Values for some columns of one row. */
export type RowValues = {
  readonly table: TableName;
  readonly id: string;
  readonly values: Readonly<Record<string, unknown>>;
};

/** Columns that other rows lean on: a command of their own keeps the two in step. */
const guarded: { readonly [T in TableName]?: readonly string[] } = {
  pole: ["eastM", "northM"],
  span: ["fromPoleId", "toPoleId", "lengthM", "strandSectionId"],
  crossing: ["spanId"],

  cable: ["cableTypeId", "fromClosureId"],
  slack: ["cableId", "spanId", "offsetM", "kind", "terminalId"],
  closure: ["cableId", "spanId"],
  terminal: ["terminalModelId", "cableId", "spanId", "offsetM", "reservedPortCount"],
  drop: ["terminalId", "port", "livingUnitId"],
  fiberUse: ["cableId", "fiber", "purpose", "terminalId", "splitterId", "closureId", "lateralCableId", "lateralFiber"],
};

const whole: readonly TableName[] = [
  "cableRun",
  "splitter",
  "waiver",
  "revision",
  "settings",
  "settingBasis",
  "milestone",
  "reading",
  "rivalReading",
  "packet",
  "photo",
  "trace",
  "traceEvent",
  "punch",
  "signOff",
];

/** The edit that writes columns of one row; refuses what breaks the table's schema, leads nowhere, or has its own command. */
export function setRow(route: Route, { table, id, values }: RowValues): Result<RowChange> {
  const before = route[table].get(id);
  if (!before) return missing(table, id);
  const held = whole.includes(table) ? Object.keys(values) : (guarded[table] ?? []);
  const leaned = Object.keys(values).find((column) => column === "id" || held.includes(column));
  if (leaned !== undefined)
    return fail("guarded", "Other rows lean on this value.", `${id}, ${leaned}`, "Use the edit made for it.");
  const checked = tables[table].safeParse({ ...before, ...values });
  if (!checked.success) {
    const issue = checked.error.issues[0];
    const where = [id, ...(issue?.path ?? [])].join(", ");
    return fail("bad-value", `The value does not fit: ${issue?.message ?? "unknown shape"}.`, where, "Correct it.");
  }
  const astray = strayReference(route, table, checked.data);
  if (astray)
    return fail(
      "missing-row",
      `There is no such ${astray.table}.`,
      `${id}, ${astray.column}`,
      "Choose one of the route.",
    );
  if (isOffSpan(route, checked.data))
    return fail("off-span", "That point is past the far pole.", id, "Choose a point between the two poles.");
  return ok({ table, id, before, after: checked.data } as RowChange); // the table's own schema made the row
}

function isOffSpan(route: Route, row: object): boolean {
  const spanId: unknown = Reflect.get(row, "spanId");
  const offsetM: unknown = Reflect.get(row, "offsetM");
  if (typeof spanId !== "string" || typeof offsetM !== "number") return false;
  return offsetM > (route.span.get(spanId)?.lengthM ?? 0);
}
