import type { BuiltKind } from "../model/closeoutRows.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { type Standing, type StandingState, standingOf, standingStates } from "./standing.ts";
import { longThings, type Stretch, stretches } from "./stretches.ts";
import type { Subject } from "./subject.ts";

/** A thing of the route and how far it has come. */
export type BuiltThing = { readonly subject: Subject; readonly standing: Standing };

/** Things of one kind together. */
export type KindRoll = {
  readonly kind: BuiltKind;
  readonly count: number;
  /** How many stand in each state. */
  readonly byState: Readonly<Record<StandingState, number>>;
  /** The state all of them have come to at least. */
  readonly least: StandingState;
  readonly askedCount: number;
  readonly missingCount: number;
};

/** A row of the board: what belongs to a stretch, kind by kind. */
export type BoardRow = Stretch & { readonly built: readonly BuiltThing[]; readonly kinds: readonly KindRoll[] };

export type Board = {
  readonly rows: readonly BoardRow[];
  /** Strand and cable, which run along many stretches. */
  readonly long: readonly BuiltThing[];
  /** Over the whole route. */
  readonly kinds: readonly KindRoll[];
};

/** Kinds in the order of the board. */
const boardKinds: readonly BuiltKind[] = [
  "pole",
  "span",
  "bond",
  "closure",
  "terminal",
  "port",
  "drop",
  "strandSection",
  "cable",
];

/** How far the route has come: by stretch and by kind. */
export const closeoutBoard = defineQuery("closeout-board", (plant): Board => {
  const rows = stretches(plant, "").map((one) => ({ ...one, ...stretchStanding(plant, one.id) }));
  const long = longThings(plant).map((subject) => ({ subject, standing: standingOf(plant, subject) }));
  return { rows, long, kinds: [...rollUp(rows.flatMap((one) => one.kinds)), ...rollThings(long)] };
});

/** Every thing of the route with its standing, along the route; strand and cable at the end. */
export function builtThings(plant: Plant): readonly BuiltThing[] {
  const { rows, long } = closeoutBoard(plant, "");
  return [...rows.flatMap((one) => one.built), ...long];
}

const stretchStanding = defineQuery("stretch-standing", (plant, stretchId) => {
  const things = stretches(plant, "").find((one) => one.id === stretchId)?.things ?? [];
  const built = things.map((subject) => ({ subject, standing: standingOf(plant, subject) }));
  return { built, kinds: rollThings(built) };
});

/** Things together, kind by kind; kinds without a thing are left out. */
export function rollThings(things: readonly BuiltThing[]): readonly KindRoll[] {
  return rollUp(
    things.map(({ subject, standing }) => ({
      kind: subject.kind,
      count: 1,
      byState: { ...none, [standing.state]: 1 },
      least: standing.state,
      askedCount: standing.askedCount,
      missingCount: standing.missing.length,
    })),
  );
}

const none: KindRoll["byState"] = { designed: 0, issued: 0, built: 0, tested: 0, accepted: 0 };

function rollUp(rolls: readonly KindRoll[]): readonly KindRoll[] {
  const byKind = new Map<BuiltKind, KindRoll>();
  for (const one of rolls) {
    const before = byKind.get(one.kind);
    byKind.set(one.kind, before ? together(before, one) : one);
  }
  return boardKinds.flatMap((kind) => byKind.get(kind) ?? []);
}

function together(a: KindRoll, b: KindRoll): KindRoll {
  const sum = (state: StandingState) => a.byState[state] + b.byState[state];
  return {
    kind: a.kind,
    count: a.count + b.count,
    byState: {
      designed: sum("designed"),
      issued: sum("issued"),
      built: sum("built"),
      tested: sum("tested"),
      accepted: sum("accepted"),
    },
    least: standingStates.indexOf(b.least) < standingStates.indexOf(a.least) ? b.least : a.least,
    askedCount: a.askedCount + b.askedCount,
    missingCount: a.missingCount + b.missingCount,
  };
}
