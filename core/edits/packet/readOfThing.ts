import { readingMark } from "../../closeout/packet/readingMark.ts";
import { saysSame } from "../../closeout/packet/readingText.ts";
import type { Row } from "../../model/tables.ts";
import { byText } from "../../plant/sorting.ts";

/** What is read of one thing: what stands, and what crews brought beside it. */
export type ReadOfThing = {
  readonly standing: Row<"reading"> | null;
  readonly rivals: readonly Row<"rivalReading">[];
};

/** Marks a reading keeps of those it was made on; common practice, no source. */
const mostMarks = 1000;

/** The id under which a crew's reading waits: the same however often it is brought. */
export function rivalId(readingId: string, packetId: string, mark: string): string {
  return `${readingId} ${packetId} ${mark}`;
}

/** Marks as rows keep them. */
export function marksText(marks: Iterable<string>): string {
  return [...new Set(marks)].sort(byText).slice(-mostMarks).join(" ");
}

/**
 * One more reading beside those there are; the same in whatever order readings come, and however often.
 *
 * A reading gives way once any was made on it, that is by a crew that knew it; so does what a person took down or decided, which stands till
 * then. Where crews say the same it stands, by the first of them; where they differ none of theirs does.
 */
export function withBrought({ standing, rivals }: ReadOfThing, brought: Row<"rivalReading">): ReadOfThing {
  const told = [...rivals, ...(standing === null ? [] : broughtOf(standing)), brought];
  const known = new Set(told.flatMap((one) => one.madeOn.split(" ")).filter((one) => one !== ""));
  // each that is left tells all that gave way, so that it is known when it comes once more
  const madeOn = marksText(known);
  const live = [...new Map(told.map((one) => [one.id, { ...one, madeOn }])).values()]
    .filter((one) => !known.has(readingMark(one)))
    .sort(bySigning);
  if (standing?.packetId === null && !known.has(readingMark(standing))) return { standing, rivals: live };
  const [first, ...others] = live;
  if (!first || others.some((one) => !saysSame(one, first))) return { standing: null, rivals: live };
  const { id: _, readingId, ...read } = first;
  return { standing: { id: readingId, ...read }, rivals: others };
}

/** What stands as the packet brought it; nothing where it is a person's word. */
function broughtOf({ id: readingId, packetId, ...read }: Row<"reading">): readonly Row<"rivalReading">[] {
  if (packetId === null) return [];
  return [{ id: rivalId(readingId, packetId, readingMark(read)), readingId, packetId, ...read }];
}

function bySigning(a: Row<"rivalReading">, b: Row<"rivalReading">): number {
  return byText(a.atIso, b.atIso) || byText(a.by, b.by) || byText(a.id, b.id);
}
