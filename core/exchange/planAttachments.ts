import type { Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { Attachment } from "../model/tables.ts";
import type { ImportRequest, PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { planRows } from "./planRows.ts";
import { readAttachments } from "./readAttachments.ts";

const accepted = "the tag of a pole already imported, each attachment once";

/** What a file of attachments would do to a route; one is already there where pole, owner, kind and height are the same. */
export function planAttachments(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const poles = new Map([...route.pole.values()].map((pole) => [pole.tag, pole.id]));
  return planRows(route, request, map, readAttachments(table, map, options), {
    table: "attachment",
    place({ fileLine: _line, tag, ...columns }, refuse) {
      const poleId = poles.get(tag);
      if (poleId !== undefined) return { ...columns, poleId };
      refuse("tag", tag, "There is no pole with this tag in the route.", accepted);
      return null;
    },
    keyOf: attachmentKey,
    refuseTwin({ tag }, earlierLine, refuse) {
      refuse("tag", tag, `The same attachment is already on ${table.lineWord} ${earlierLine}.`, accepted);
    },
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
