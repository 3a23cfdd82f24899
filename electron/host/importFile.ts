import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { ImportReply } from "../../core/contract/shapes.ts";
import type { BadRow } from "../../core/exchange/badRow.ts";
import { importFields } from "../../core/exchange/importFields.ts";
import type { ImportChoices } from "../../core/exchange/importOptions.ts";
import type { ImportPlan } from "../../core/exchange/importPlan.ts";
import { planImport } from "../../core/exchange/planImport.ts";
import type { Table } from "../../core/exchange/table.ts";
import { type Fault, ok, type Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { type ReadTableOptions, readTable } from "./readTable/readTable.ts";

/** A file as a person chose it: its name and its bytes. */
export type ChosenFile = { readonly name: string; readonly bytes: Uint8Array };

/** A file read, and what it would do to a route, or the problem that keeps it out. */
export type PlannedImport = { readonly table: Table } & (
  | { readonly plan: ImportPlan; readonly problem: null }
  | { readonly plan: ImportPlan | null; readonly problem: Fault }
);

/** A file by its path, as a person names it on the command line. */
export function readChosen(path: string): Result<ChosenFile> {
  return onDisk(path, () => ok({ name: basename(path), bytes: readFileSync(path) }));
}

const firstRowCount = 20;

const kindWords: Readonly<Record<ImportChoices["kind"], string>> = {
  pole: "poles",
  livingUnit: "living units",
  spanPair: "spans",
  attachment: "attachments",
  crossing: "crossings",
  groundPoint: "ground points",
  structure: "structures",
  guy: "guys",
  wireSag: "sags of wires",
  dropCrossing: "drop crossings",
};

/**
 * Reads a file and works out what it would do to a route, without doing it.
 *
 * @returns refuses where the bytes are no table; what else keeps the file out is the plan's problem, so that it can be mended
 */
export async function planFile(
  route: Route,
  file: ChosenFile,
  choices: ImportChoices,
  reading: ReadTableOptions = {},
): Promise<Result<PlannedImport>> {
  const read = await readTable(file.name, file.bytes, reading);
  if (!read.ok) return read;
  const table = read.value;
  const planned = planImport(route, { ...choices, table });
  if (!planned.ok) return ok({ table, plan: null, problem: planned.fault });
  const plan = planned.value;
  return ok(plan.refused ? { table, plan, problem: badRowsFault(table, plan.bad) } : { table, plan, problem: null });
}

/** What the edit of an import is called. */
export function importLabel(kind: ImportChoices["kind"], fileName: string): string {
  return `Import ${kindWords[kind]} from ${fileName}`;
}

/** An import as the window shows it before it is taken. */
export function importReply(kind: ImportChoices["kind"], { plan, table, problem }: PlannedImport): ImportReply {
  return {
    lineWord: table.lineWord,
    headings: table.headings,
    columns: { ...plan?.columns },
    fields: importFields[kind].map(({ field, title, required }) => ({ field, title, required })),
    firstRows: table.rows.slice(0, firstRowCount).map((row) => row.cells),
    newCount: plan?.addedCount ?? 0,
    changedCount: plan?.replacedCount ?? 0,
    skippedCount: plan?.skippedCount ?? 0,
    spanCount: plan?.spanCount ?? 0,
    bad: plan?.bad ?? table.bad,
    notes: plan?.notes ?? table.notes,
    spansForReview: plan?.spansForReview ?? [],
    problem,
  };
}

function badRowsFault(table: Table, bad: readonly BadRow[]): Fault {
  const first = bad[0];
  const rowCount = new Set(bad.map((one) => one.line)).size;
  const count = rowCount > 1 ? `${rowCount} rows cannot be taken; the first` : "A row cannot be taken";
  return {
    code: "bad-rows",
    what: `${count}: ${first?.what ?? ""}`,
    where: first
      ? `${first.file}, ${table.lineWord} ${first.line}${first.column ? `, ${first.column}` : ""}`
      : table.name,
    mend: `Accepted here: ${first?.accepted ?? "see the file"}. Mend the file, or take the good rows only.`,
  };
}
