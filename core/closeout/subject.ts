import type { BuiltKind, BuiltState, ReadingKind } from "../model/closeoutRows.ts";
import type { TableName } from "../model/tables.ts";

/** What a row of the closeout is about: columns as in core/model/closeoutRows.ts. */
export type Subject = {
  readonly kind: BuiltKind;
  readonly subjectId: string;
  readonly port: number;
  readonly alongId: string;
};

/** One of a route's things by its kind and row. */
export function subjectOf(kind: BuiltKind, subjectId: string, port = 0, alongId = ""): Subject {
  return { kind, subjectId, port, alongId };
}

/** A key by which two rows are about the same thing. */
export function subjectKey({ kind, subjectId, port, alongId }: Subject): string {
  return [kind, subjectId, ...(port > 0 ? [port] : []), ...(alongId === "" ? [] : [alongId])].join(" ");
}

/** The id of the row that tells a thing reached a state: the same whoever writes it. */
export function milestoneId(subject: Subject, state: BuiltState): string {
  return `${subjectKey(subject)} ${state}`;
}

/** The id of what stands as read of a thing: the same whoever reads it. */
export function readingId(subject: Subject, what: ReadingKind, wavelengthNm = 0): string {
  return [subjectKey(subject), what, ...(wavelengthNm > 0 ? [wavelengthNm] : [])].join(" ");
}

/** The table a kind of thing stands in; a port in its terminal's, a bond in its pole's. */
export const subjectTables = {
  pole: "pole",
  span: "span",
  strandSection: "strandSection",
  cable: "cable",
  closure: "closure",
  terminal: "terminal",
  port: "terminal",
  drop: "drop",
  bond: "pole",
} as const satisfies Readonly<Record<BuiltKind, TableName>>;
