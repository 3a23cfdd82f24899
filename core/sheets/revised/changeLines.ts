import { catalogueNames } from "../../model/catalogueNames.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { TableName } from "../../model/tables.ts";
import { byName } from "../../plant/sorting.ts";
import { tellDrops } from "./tellDrops.ts";
import { tellFibers } from "./tellFibers.ts";
import { tellTerminals } from "./tellHung.ts";
import { tellPlain } from "./tellPlain.ts";
import { tellRuns } from "./tellRuns.ts";
import type { Between, ChangeLine } from "./told.ts";

/** A heading with the changes told under it. */
export type ChangeGroup = { readonly heading: string; readonly lines: readonly ChangeLine[] };

type Teller = (rows: readonly RowChange[], between: Between) => readonly ChangeLine[];

const plain =
  (...tables: readonly TableName[]): Teller =>
  (rows, between) =>
    tables.flatMap((table) => tellPlain(table, rows, between));

/** What is told, in the order a crew meets it. Tables left out say nothing of their own: another line tells of them. */
const told: readonly (readonly [heading: string, tell: Teller])[] = [
  ["Poles and guys", plain("pole", "guy")],
  ["Attachments", plain("attachment")],
  ["Spans and strand", plain("span", "strandSection", "crossing", "structure", "groundPoint", "wireSag")],
  [
    "Cables, coils and closures",
    (rows, between) => [...plain("cable", "slack", "closure")(rows, between), ...tellRuns(rows, between)],
  ],
  ["Terminals", tellTerminals],
  ["Fibers and light", (rows, between) => [...plain("feed")(rows, between), ...tellFibers(rows, between)]],
  [
    "Living units and drops",
    (rows, between) => [...plain("livingUnit", "dropCrossing")(rows, between), ...tellDrops(rows, between)],
  ],
  ["Standards", plain("settings")],
  ["Catalogue", plain(...catalogueNames)],
  ["Findings waived", plain("waiver")],
];

/** What a sum of edits changed, in words of the trade, under headings; the same edits give the same words in the same order. */
export function changeGroups(between: Between, rows: readonly RowChange[]): readonly ChangeGroup[] {
  return told.flatMap(([heading, tell]) => {
    const lines = [...tell(rows, between)].sort((a, b) => byName(a.text, b.text));
    return lines.length === 0 ? [] : [{ heading, lines }];
  });
}
