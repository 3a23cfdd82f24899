import type { Gate } from "../../../core/closeout/gates.ts";
import { type Subject, subjectKey, subjectTables } from "../../../core/closeout/subject.ts";
import { readingWords } from "../../../core/closeout/words.ts";
import { subjectTag } from "../../../core/edits/subjects.ts";
import type { Route } from "../../../core/model/route.ts";
import { type RefKey, refKey } from "../../app/ref.ts";
import { signOffWords } from "./words.ts";

/** One thing that keeps a gate shut, as it is told, and the row it leads to; null where it leads nowhere. */
export type MissingThing = { readonly key: string; readonly says: string; readonly to: RefKey | null };

/** What a gate is missing, in words. */
export function missingThings(route: Route, { missing }: Gate, most: number): readonly MissingThing[] {
  return missing.slice(0, most).map((one) => missingThing(route, one));
}

function missingThing(route: Route, one: Gate["missing"][number]): MissingThing {
  switch (one.kind) {
    case "finding": {
      const [first] = one.finding.subjects;
      return { key: one.finding.key, says: one.finding.message, to: first ? refKey(first.table, first.id) : null };
    }
    case "thing":
      return { key: subjectKey(one.subject), says: subjectTag(route, one.subject), to: refOf(one.subject) };
    case "reading": {
      const { id, subject, what } = one.asked;
      return { key: id, says: `${subjectTag(route, subject)}: ${readingWords[what]}`, to: refOf(subject) };
    }
    case "row":
      return { key: one.id, says: one.name, to: rowPlace(route, one.table, one.id) };
    case "nothing":
      return { key: "nothing", says: signOffWords.nothing, to: null };
  }
}

function rowPlace(route: Route, table: "trace" | "punch" | "rivalReading", id: string): RefKey | null {
  if (table === "trace") {
    const cableId = route.trace.get(id)?.cableId ?? null;
    return cableId === null ? null : refKey("cable", cableId);
  }
  const subject = route[table].get(id);
  return subject ? refOf(subject) : null;
}

function refOf({ kind, subjectId }: Subject): RefKey {
  return refKey(subjectTables[kind], subjectId);
}
