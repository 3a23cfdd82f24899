import type { Route } from "../model/route.ts";
import type { TableName } from "../model/tables.ts";
import { kindWord } from "./countedKinds.ts";

/** What people call a terminal; its id where it is gone. */
export function terminalTag(route: Route, terminalId: string): string {
  return route.terminal.get(terminalId)?.name ?? terminalId;
}

/** What people call a pole; its id where it is gone. */
export function poleTag(route: Route, poleId: string): string {
  return route.pole.get(poleId)?.tag ?? poleId;
}

/** What people call a span: its two poles. */
export function spanTag(route: Route, spanId: string): string {
  const span = route.span.get(spanId);
  return span ? `${poleTag(route, span.fromPoleId)} to ${poleTag(route, span.toPoleId)}` : spanId;
}

/** What people call a cable; its id where it is gone. */
export function cableTag(route: Route, cableId: string): string {
  return route.cable.get(cableId)?.name ?? cableId;
}

/** What people call a living unit: its address. */
export function unitTag(route: Route, livingUnitId: string): string {
  return route.livingUnit.get(livingUnitId)?.address ?? livingUnitId;
}

/** A drop by its terminal and port. */
export function dropTag(route: Route, dropId: string): string {
  const drop = route.drop.get(dropId);
  return drop ? `${terminalTag(route, drop.terminalId)} port ${drop.port}` : dropId;
}

/** A coil by its terminal, or by its span where it waits alone. */
export function coilTag(route: Route, slackId: string): string {
  const coil = route.slack.get(slackId);
  if (!coil) return slackId;
  return coil.terminalId === null
    ? `in span ${spanTag(route, coil.spanId)}`
    : `of terminal ${terminalTag(route, coil.terminalId)}`;
}

/** Something of the punch list by its number and what is to be mended. */
export function punchTag(route: Route, punchId: string): string {
  const punch = route.punch.get(punchId);
  return punch ? `punch ${punch.number}, ${punch.what}` : punchId;
}

/** A row of any table by its kind and the first of the columns people name rows by; its id where it has none. */
export function rowTag(route: Route, table: TableName, rowId: string): string {
  const row = route[table].get(rowId) ?? {};
  for (const column of ["tag", "name", "address", "letter"]) {
    const value: unknown = Reflect.get(row, column);
    if (typeof value === "string" && value !== "") return `${kindWord(table, 1)} ${value}`;
  }
  return `${kindWord(table, 1)} ${rowId}`;
}
