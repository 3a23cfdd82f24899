import { type Subject, subjectTables } from "../closeout/subject.ts";
import { fail, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import { dropTag, poleTag, rowTag, spanTag, terminalTag } from "./tags.ts";

/** The refusal where what a row would be about is not on the route; null where it is. */
export function subjectAstray(route: Route, { kind, subjectId, port }: Subject): Result<never> | null {
  const isThere = route[subjectTables[kind]].has(subjectId);
  const ports = kind === "port" ? portCountOf(route, subjectId) : 0;
  if (isThere && (kind === "port" ? port >= 1 && port <= ports : port === 0)) return null;
  return fail(
    "missing-row",
    isThere ? `${terminalTag(route, subjectId)} has no port ${port}.` : `There is no such ${kind}.`,
    `${kind} ${subjectId}`,
    "Look at the present state and choose again.",
  );
}

/** What people call a thing of the closeout. */
export function subjectTag(route: Route, { kind, subjectId, port }: Subject): string {
  if (kind === "port") return `port ${port} of ${terminalTag(route, subjectId)}`;
  if (kind === "bond") return `the bond at ${poleTag(route, subjectId)}`;
  if (kind === "span") return `span ${spanTag(route, subjectId)}`;
  if (kind === "drop") return `the drop of ${dropTag(route, subjectId)}`;
  return rowTag(route, subjectTables[kind], subjectId);
}

function portCountOf(route: Route, terminalId: string): number {
  const terminal = route.terminal.get(terminalId);
  return route.terminalModel.get(terminal?.terminalModelId ?? "")?.portCount ?? 0;
}
