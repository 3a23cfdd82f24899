import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Attachment } from "../model/tables.ts";
import type { BadRow } from "./badRow.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { readAttachments } from "./readAttachments.ts";

/** What a file of attachments would do to a route; one is already there where pole, owner, kind and height are the same. */
export function planAttachments(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const read = readAttachments(table, map, options);
  const poles = new Map([...route.pole.values()].map((pole) => [pole.tag, pole.id]));
  const present = new Map([...route.attachment.values()].map((one) => [attachmentKey(one), one]));
  const nextId = freshIds(route, "attachment");
  const rows: RowChange[] = [];
  const bad: BadRow[] = [...read.bad];
  const firstLine = new Map<string, number>();
  let skippedCount = 0;
  for (const { fileLine, tag, ...columns } of read.rows) {
    const poleId = poles.get(tag);
    const key = attachmentKey({ poleId: poleId ?? "", ...columns });
    const earlier = firstLine.get(key);
    if (poleId === undefined || earlier !== undefined) {
      const what =
        poleId === undefined
          ? "There is no pole with this tag in the route."
          : `The same attachment is already on ${table.lineWord} ${earlier}.`;
      bad.push({
        file: table.name,
        line: fileLine,
        column: map.tag ?? "",
        value: tag,
        what,
        accepted: "the tag of a pole already imported, each attachment once",
      });
      continue;
    }
    firstLine.set(key, fileLine);
    const before = present.get(key) ?? null;
    if (before && request.onExisting === "skip") {
      skippedCount += 1;
      continue;
    }
    const after: Attachment = { ...columns, id: before?.id ?? nextId(), poleId };
    rows.push({ table: "attachment", id: after.id, before, after });
  }
  return ok({
    rows,
    ...countRows(rows, "attachment"),
    skippedCount,
    spanCount: 0,
    bad,
    notes: read.notes,
    spansForReview: [],
  });
}

function attachmentKey({
  poleId,
  owner,
  kind,
  heightM,
}: Pick<Attachment, "poleId" | "owner" | "kind" | "heightM">): string {
  return JSON.stringify([poleId, owner, kind, Math.round(heightM * 1000)]);
}
