import { type ClearanceCase, type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import type { ClearanceLimit } from "../model/tables.ts";
import { type GroundLine, groundAtM, groundLine } from "./groundLine.ts";
import { type Least, leastAlong } from "./leastAlong.ts";
import { type LineHeight, lineHeight } from "./lineHeight.ts";
import { defineQuery, type Plant } from "./plant.ts";

/** What nobody can tell, and why. */
export type Unknown = { readonly kind: "unknown"; readonly why: string };

/** The least height of the line over something in each case, or why nobody can tell. */
export type Clearance = KnownClearance | Unknown;

type KnownClearance = {
  readonly kind: "known";
  /** Least in the worst case, from the surface to the cable's underside, m. */
  readonly leastM: number;
  readonly worstCase: ClearanceCase;
  /** Where that is, m from the span's first pole. */
  readonly atOffsetM: number;
  /** Least in each case, m. */
  readonly byCase: Readonly<Record<ClearanceCase, number>>;
  /** Where that is in each case, m from the span's first pole. */
  readonly atByCaseM: Readonly<Record<ClearanceCase, number>>;
  /** How much less is asked at that place than the limit says, m: near the edges of what is crossed, where the limit says so. */
  readonly easedByCaseM: Readonly<Record<ClearanceCase, number>>;
  /** True where the surface was taken as the line between the two poles' ground. */
  readonly surfaceAssumed: boolean;
  /** True where a pole lacks the height of our strand and the company's usual one was taken. */
  readonly strandAssumed: boolean;
};

/** What a span's line passes over: how high it stands, and where along the span. */
export type Passage = {
  readonly kind: "known";
  readonly over: Surface;
  /** From and to, m. */
  readonly stretches: readonly (readonly [fromM: number, toM: number])[];
};

/** The whole width of a crossing, as far as it lies in its span. */
export function crossingPassage(plant: Plant, crossingId: string): Passage | Unknown {
  const { spanId, surfaceM, offsetM, widthM } = plant.rowOf("crossing", crossingId);
  const ground = groundLine(plant, spanId);
  if (ground.kind === "unknown") return ground;
  const { lengthM } = plant.rowOf("span", spanId);
  const nearM = clamp(offsetM - widthM / 2, 0, lengthM);
  const farM = clamp(offsetM + widthM / 2, 0, lengthM);
  const over = {
    cornersM: ground.points.map((point) => point.offsetM),
    heightAtM: (atM: number) => surfaceM ?? groundAtM(ground, atM),
    isAssumed: surfaceM === null && ground.isAssumed,
  };
  return { kind: "known", over, stretches: [[nearM, farM]] };
}

/** The open ground of a span between its crossings; null where crossings leave nothing open. */
export function groundPassage(plant: Plant, spanId: string): Passage | Unknown | null {
  const ground = groundLine(plant, spanId);
  if (ground.kind === "unknown") return ground;
  const stretches = openStretches(plant, spanId, plant.rowOf("span", spanId).lengthM);
  return stretches.length === 0 ? null : { kind: "known", over: surfaceOf(ground), stretches };
}

/** Least clearance over a crossing, all cases, over its whole width. */
export const crossingClearance = defineQuery("crossing-clearance", (plant, crossingId): Clearance => {
  const line = lineHeight(plant, plant.rowOf("crossing", crossingId).spanId);
  if (line.kind === "unknown") return line;
  const passage = crossingPassage(plant, crossingId);
  return passage.kind === "unknown" ? passage : clearanceOver(line, passage);
});

/** Least clearance of a span over the ground between its crossings, all cases; null where crossings leave nothing open. */
export const groundClearance = defineQuery("ground-clearance", (plant, spanId): Clearance | null => {
  const line = lineHeight(plant, spanId);
  if (line.kind === "unknown") return line;
  const passage = groundPassage(plant, spanId);
  return passage === null || passage.kind === "unknown" ? passage : clearanceOver(line, passage);
});

/**
 * The limit for a surface in the clearance set the settings choose and those it stands on: their strictest row; undefined where they
 * have none.
 *
 * @param condition  the case it must bind under; left out where the distance does not hang on sag
 */
export function clearanceLimitFor(
  plant: Plant,
  surface: ClearanceSurface,
  condition?: ClearanceCase,
): ClearanceLimit | undefined {
  return clearanceSetIds(plant)
    .flatMap((clearanceSetId) => plant.whereAll("clearanceLimit", { clearanceSetId, surface }))
    .map((id) => plant.rowOf("clearanceLimit", id))
    .filter((one) => condition === undefined || one.condition === "any" || one.condition === condition)
    .sort((a, b) => b.limitM - a.limitM)[0];
}

/** The clearance set of the settings and those whose limits hold beside its own. */
export function clearanceSetIds(plant: Plant): readonly string[] {
  const ids = new Set<string>();
  let next: string | null = plant.settings().clearanceSetId;
  while (next !== null && !ids.has(next)) {
    ids.add(next);
    next = plant.rowOf("clearanceSet", next).baseSetId;
  }
  return [...ids];
}

/** A case that a clearance is held against, with its limit. */
export type BindingCase = {
  readonly condition: ClearanceCase;
  readonly measuredM: number;
  readonly limit: ClearanceLimit;
};

/** Every case that binds over a surface, the one with the least to spare first; its limit is what is asked at the place measured. */
export function bindingCases(
  plant: Plant,
  surface: ClearanceSurface,
  { byCase, easedByCaseM }: Pick<KnownClearance, "byCase" | "easedByCaseM">,
): readonly BindingCase[] {
  return clearanceCases
    .flatMap((condition) => {
      const limit = clearanceLimitFor(plant, surface, condition);
      return limit ? [{ condition, measuredM: byCase[condition], limit: easedBy(limit, easedByCaseM[condition]) }] : [];
    })
    .sort((a, b) => a.measuredM - a.limit.limitM - (b.measuredM - b.limit.limitM));
}

/** A limit where so much less is asked, m. */
export function easedBy(limit: ClearanceLimit, easedM: number): ClearanceLimit {
  return easedM === 0 ? limit : { ...limit, limitM: limit.limitM - easedM };
}

/** What hangs over a surface: the line, or a drop from it. */
export type Hung = Pick<Extract<LineHeight, { kind: "known" }>, "undersideM" | "cornersM" | "strandAssumed">;

/** What hangs over: where it may bend, how high it is, and whether anybody measured it. */
export type Surface = {
  readonly cornersM: readonly number[];
  readonly heightAtM: (offsetM: number) => number;
  readonly isAssumed: boolean;
  /** How much less than its limit is asked at a place, m; left out where the limit holds throughout. */
  readonly easedM?: (offsetM: number, condition: ClearanceCase) => number;
};

/** The ground under a span, raised by what stands on it, m. */
export function surfaceOf(ground: GroundLine, raisedM = 0): Surface {
  return {
    cornersM: ground.points.map((point) => point.offsetM),
    heightAtM: (atM) => groundAtM(ground, atM) + raisedM,
    isAssumed: ground.isAssumed,
  };
}

/** Offsets between which neither what hangs nor what it passes over has a corner, stretch by stretch, m. */
export function stopsOver(
  { cornersM }: Hung,
  { over, stretches }: Omit<Passage, "kind">,
): readonly (readonly number[])[] {
  const corners = [...cornersM, ...over.cornersM].sort((a, b) => a - b);
  return stretches.map(([fromM, toM]) => [fromM, ...corners.filter((atM) => atM > fromM && atM < toM), toM]);
}

/** Least clearance of what hangs over a passage, all cases. */
export function clearanceOver(line: Hung, passage: Omit<Passage, "kind">): KnownClearance {
  const { over } = passage;
  const stops = stopsOver(line, passage);
  const easedM = over.easedM ?? (() => 0);
  const leastIn = (condition: ClearanceCase): Least & { readonly easedM: number } => {
    const least = stops
      .map((one) =>
        leastAlong(one, (atM) => line.undersideM(atM, condition) - over.heightAtM(atM) + easedM(atM, condition)),
      )
      .reduce((a, b) => (b.heightM < a.heightM ? b : a));
    const lessM = easedM(least.offsetM, condition);
    return { ...least, heightM: least.heightM - lessM, easedM: lessM };
  };
  const least = { stringing: leastIn("stringing"), hot: leastIn("hot"), iced: leastIn("iced") };
  const worstCase = clearanceCases.reduce((a, b) => (least[b].heightM < least[a].heightM ? b : a));
  const { stringing, hot, iced } = least;
  return {
    kind: "known",
    leastM: least[worstCase].heightM,
    worstCase,
    atOffsetM: least[worstCase].offsetM,
    byCase: { stringing: stringing.heightM, hot: hot.heightM, iced: iced.heightM },
    atByCaseM: { stringing: stringing.offsetM, hot: hot.offsetM, iced: iced.offsetM },
    easedByCaseM: { stringing: stringing.easedM, hot: hot.easedM, iced: iced.easedM },
    surfaceAssumed: over.isAssumed,
    strandAssumed: line.strandAssumed,
  };
}

/** Stretches of a span that no crossing covers, m from its first pole. */
function openStretches(plant: Plant, spanId: string, lengthM: number): (readonly [fromM: number, toM: number])[] {
  const covered = plant
    .where("crossing", "spanId", spanId)
    .map((id) => plant.rowOf("crossing", id))
    .sort((a, b) => a.offsetM - a.widthM / 2 - (b.offsetM - b.widthM / 2));
  const open: (readonly [number, number])[] = [];
  let fromM = 0;
  for (const { offsetM, widthM } of covered) {
    const nearM = offsetM - widthM / 2;
    if (nearM > fromM) open.push([fromM, Math.min(nearM, lengthM)]);
    fromM = Math.max(fromM, offsetM + widthM / 2);
  }
  return fromM < lengthM ? [...open, [fromM, lengthM]] : open;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
