import {
  type BoardRow,
  type BuiltThing,
  closeoutBoard,
  type KindRoll,
  rollThings,
} from "../../../core/closeout/board.ts";
import { subjectKey, subjectOf } from "../../../core/closeout/subject.ts";
import { readingWords } from "../../../core/closeout/words.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import type { OpenRoute, WindowFinding } from "../../app/routeStore.ts";
import type { BoardFilter } from "../closeoutView.ts";
import { boardWords as words } from "../words.ts";

/** A row of the board as it is shown. */
export type ShownRow = {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly terminalId: string | null;
  readonly poleId: string | null;
  readonly things: readonly BuiltThing[];
  readonly kinds: readonly KindRoll[];
  readonly findings: readonly WindowFinding[];
};

/** Rows of the board, strand and cable last. */
export function boardRows(open: OpenRoute): readonly ShownRow[] {
  const { plant } = open;
  const { rows, long } = closeoutBoard(plant, "");
  const deviating = deviatingThings(open);
  const findingsOf = (things: readonly BuiltThing[]) =>
    things.flatMap(({ subject }) => deviating.get(subjectKey(subject)) ?? []);
  const last = { id: "long", name: words.long, place: "", terminalId: null, poleId: null, things: long };
  return [
    ...rows.map((row) => ({ ...nameOf(plant, row), ...row, things: row.built, findings: findingsOf(row.built) })),
    ...(long.length > 0 ? [{ ...last, kinds: rollThings(long), findings: findingsOf(long) }] : []),
  ];
}

/** Whether a row is shown under a filter. */
export function isShownUnder(filter: BoardFilter, row: ShownRow): boolean {
  if (filter === "deviating") return row.findings.length > 0;
  return filter === "all" || row.things.some(({ standing }) => standing.missing.length + standing.disputed.length > 0);
}

/** What is still to be read, counted by what it is, and what crews disagree on: light 8, house tag 2, coil left disputed. */
export function missingText(things: readonly BuiltThing[]): string {
  const counts = new Map<string, number>();
  const add = (word: string) => counts.set(word, (counts.get(word) ?? 0) + 1);
  for (const { standing } of things) {
    const { missing, disputed } = standing;
    for (const one of missing) if (!disputed.includes(one)) add(readingWords[one.what]);
    for (const { what } of disputed) add(words.disputed(readingWords[what]));
  }
  return [...counts].map(([what, count]) => (count === 1 ? what : `${what} ${count}`)).join(", ");
}

/** Findings about readings that nobody waived, by the thing that was read. */
function deviatingThings({ route, findings }: OpenRoute): ReadonlyMap<string, readonly WindowFinding[]> {
  const byThing = new Map<string, WindowFinding[]>();
  for (const finding of findings.values()) {
    const [first] = finding.subjects;
    const reading = first?.table === "reading" ? route.reading.get(first.id) : undefined;
    if (!reading || finding.waiverId !== null) continue;
    // a mark is read at a pole of a cable; the board knows the pole
    const key = subjectKey(reading.what === "mark" ? subjectOf(reading.kind, reading.subjectId) : reading);
    byThing.set(key, [...(byThing.get(key) ?? []), finding]);
  }
  return byThing;
}

function nameOf(plant: Plant, { terminalId, poleId }: BoardRow): { readonly name: string; readonly place: string } {
  const { tag } = plant.rowOf("pole", poleId);
  return terminalId === null
    ? { name: words.beyond, place: words.after(tag) }
    : { name: plant.rowOf("terminal", terminalId).name, place: words.atPole(tag) };
}
