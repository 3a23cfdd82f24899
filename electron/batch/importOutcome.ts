import type { BadRow } from "../../core/exchange/badRow.ts";
import type { ImportChoices } from "../../core/exchange/importOptions.ts";
import type { Fault } from "../../core/model/result.ts";
import { faultLines } from "../host/faultLines.ts";
import type { PlannedImport } from "../host/importFile.ts";
import type { Outcome } from "./verb.ts";

/** One list of an import, worked out. */
export type PlannedList = PlannedImport & { readonly file: string; readonly kind: ImportChoices["kind"] };

const mostBadLines = 40;

/** What lists did to the route, or would do. */
export function outcomeOf(planned: readonly PlannedList[], isDry: boolean): Outcome {
  const lines = planned.flatMap(listLines);
  const json = planned.map(({ file, kind, plan }) => {
    const { rows, ...told } = plan ?? { rows: [] };
    return { file, kind, rowCount: rows.length, ...told };
  });
  return { exitCode: 0, lines: isDry ? [...lines, "Dry run: nothing was written."] : lines, json };
}

/** Why a list was refused, with every row that keeps it out. */
export function refusalOf({ plan, problem, table }: PlannedList): Outcome {
  const fault: Fault | null = problem;
  const bad = plan?.bad ?? table.bad;
  const lines = [...(fault === null ? [] : faultLines(fault)), ...badLines(bad, table.lineWord)];
  return { exitCode: 2, lines, json: { ok: false, fault, bad } };
}

function listLines({ file, plan, table }: PlannedList): string[] {
  if (plan === null) return [];
  const { addedCount, replacedCount, skippedCount, spanCount, bad } = plan;
  const badCount = new Set(bad.map((one) => one.line)).size;
  const counts = [
    `${addedCount} added`,
    `${replacedCount} replaced`,
    `${skippedCount} left as they were`,
    `spans ${spanCount}`,
    `bad rows ${badCount}`,
  ];
  const read = Object.entries(plan.columns).map(([field, heading]) => `${field} from "${heading}"`);
  return [
    `${file}: ${counts.join(", ")}`,
    ...(read.length > 0 ? [`  read: ${read.join(", ")}`] : []),
    ...plan.notes.map((note) => `  note: ${note}`),
    ...badLines(bad, table.lineWord),
    ...plan.spansForReview.map((span) => `  look at span ${span.fromTag} to ${span.toTag}: ${span.review}`),
  ];
}

/** Rows of a list that cannot be taken, each with what would be accepted. */
export function badLines(bad: readonly BadRow[], lineWord: string): string[] {
  const shown = bad.slice(0, mostBadLines).map(({ line, column, value, what, accepted }) => {
    const place = [`${lineWord} ${line}`, column].filter((part) => part !== "").join(", ");
    return `  ${place}${value ? ` "${value}"` : ""}: ${what} Accepted: ${accepted}.`;
  });
  const rest = bad.length - shown.length;
  return rest > 0 ? [...shown, `  and ${rest} more; --json lists them all`] : shown;
}
