import { type ClearanceCase, type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import {
  clearanceLimitFor,
  crossingPassage,
  easedBy,
  groundPassage,
  type Hung,
  type Passage,
  stopsOver,
} from "../plant/clearance.ts";
import { lineHeight } from "../plant/lineHeight.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag } from "../plant/spanSag.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { structurePassage, structureSurfaces, undersidePassage, upsideDown } from "../plant/structureClearance.ts";
import type { Barred, Cause } from "./barred.ts";
import { leastOf, leastPerShare, noiseM } from "./leastPerShare.ts";
import { type SpanAtPole, spansAt, strandBendM } from "./spanAtPole.ts";

/** What bars heights, and what could not be looked at, a sentence each. */
export type Found = { readonly barred: readonly Barred[]; readonly unchecked: readonly string[] };

/** Heights at a pole too low for what the spans beside it pass over: crossings, open ground and structures, in every case that binds. */
export function barredBySurfaces(plant: Plant, poleId: string): Found {
  const barred: Barred[] = [];
  const unchecked: string[] = [];
  for (const span of spansAt(plant, poleId)) {
    const line = lineHeight(plant, span.spanId);
    const sag = spanSag(plant, span.spanId);
    if (line.kind === "unknown") unchecked.push(line.why);
    if (line.kind === "unknown" || sag.kind === "unknown") continue;
    const heightM = strandAtPole(plant, poleId).heightM;
    for (const { passage, surface, cause } of spanPassages(plant, span)) {
      const bendM = (condition: ClearanceCase) => strandBendM(span.lengthM, sag[condition]);
      const over = { hung: line, passage, surface, cause, heightM, shareAt: span.shareAt, bendM };
      const low = tooLow(plant, over);
      barred.push(...(cause.against.table === "structure" ? openBelow(plant, { ...over, line }, low) : low));
    }
  }
  return { barred, unchecked };
}

type Over = {
  readonly hung: Hung;
  readonly passage: Omit<Passage, "kind">;
  readonly surface: ClearanceSurface;
  readonly cause: Omit<Cause, "condition" | "limit" | "shares">;
  /** What the hung thing's heights were worked out with at the pole, m. */
  readonly heightM: number;
  readonly shareAt: (offsetM: number) => number;
  /** How the height bends over the share in a case, m. */
  readonly bendM: (condition: ClearanceCase) => number;
};

/** Heights at the pole that leave too little over a passage, one a case that has a limit. */
export function tooLow(plant: Plant, { hung, passage, surface, cause, heightM, shareAt, bendM }: Over): Barred[] {
  return clearanceCases.flatMap((condition) => {
    const limit = clearanceLimitFor(plant, surface, condition);
    if (!limit) return [];
    const easedM = (offsetM: number) => passage.over.easedM?.(offsetM, condition) ?? 0;
    const spareAt = (offsetM: number) => ({
      share: shareAt(offsetM),
      spareM:
        hung.undersideM(offsetM, condition) -
        heightM * shareAt(offsetM) -
        passage.over.heightAtM(offsetM) -
        limit.limitM +
        easedM(offsetM),
    });
    const pieces = piecesOf(stopsOver(hung, passage)).map((piece) => {
      const ends = [spareAt(piece[0]), spareAt(piece[1])] as const;
      return { piece, ...leastPerShare(ends, bendM(condition)) };
    });
    const [first] = pieces;
    if (!first) return [];
    const { leastM, share, piece } = pieces.reduce((a, b) => (b.leastM < a.leastM ? b : a), first);
    if (leastM === Number.POSITIVE_INFINITY) return [];
    const asked = easedBy(limit, easedM(offsetOfShare(shareAt, piece, share)));
    const shares = { above: null, below: share };
    return [
      { aboveM: Number.NEGATIVE_INFINITY, belowM: -leastM, cause: { ...cause, condition, limit: asked, shares } },
    ];
  });
}

/** The place on a piece where the pole has a share; shares run straight along a piece. */
function offsetOfShare(shareAt: Over["shareAt"], [fromM, toM]: readonly [number, number], share: number): number {
  const [from, to] = [shareAt(fromM), shareAt(toM)];
  return from === to ? fromM : fromM + ((share - from) / (to - from)) * (toM - fromM);
}

/** The same bars as one that leaves the heights free from which the line passes under a structure, where it may. */
function openBelow(
  plant: Plant,
  { line, heightM, shareAt, bendM, cause }: Over & { readonly line: Parameters<typeof upsideDown>[0] },
  low: readonly Barred[],
): readonly Barred[] {
  const passage = undersidePassage(plant, cause.against.id);
  const { under } = structureSurfaces(plant.rowOf("structure", cause.against.id).kind);
  const [first] = low;
  if (!first || passage?.kind !== "known") return low;
  const hung = upsideDown(line);
  const high = tooHigh(plant, { hung, passage, surface: under, cause, heightM, shareAt, bendM });
  if (!high) return low;
  const lowest = low.reduce((a, b) => (b.belowM > a.belowM ? b : a), first);
  const shares = { above: high.share, below: lowest.cause.shares.below };
  const bar = { aboveM: high.leastM, belowM: lowest.belowM };
  return [{ ...bar, cause: { ...lowest.cause, condition: null, under: high.limit, shares } }];
}

/** Up to which height at the pole enough is left under a passage in every case; null where nothing asks for it. */
function tooHigh(plant: Plant, { hung, passage, surface, heightM, shareAt, bendM }: Over) {
  const ends = clearanceCases.flatMap((condition) => {
    const limit = clearanceLimitFor(plant, surface, condition);
    if (!limit) return [];
    const spareAt = (offsetM: number) => ({
      share: shareAt(offsetM),
      spareM:
        hung.undersideM(offsetM, condition) +
        heightM * shareAt(offsetM) -
        passage.over.heightAtM(offsetM) -
        limit.limitM,
    });
    const pieces = piecesOf(stopsOver(hung, passage));
    const least = pieces.map(([fromM, toM]) => leastPerShare([spareAt(fromM), spareAt(toM)], -bendM(condition)));
    return [{ limit, ...leastOf(least) }];
  });
  const [first] = ends;
  return first ? ends.reduce((a, b) => (b.leastM < a.leastM ? b : a), first) : null;
}

type SpanPassage = Pick<Over, "surface" | "cause"> & { readonly passage: Passage };

/** What a span passes over: crossings, structures that it does not pass far beside, open ground; what nobody can tell is left out. */
export function spanPassages(plant: Plant, { spanId }: SpanAtPole): SpanPassage[] {
  const crossings = plant.where("crossing", "spanId", spanId).map((id) => ({
    passage: crossingPassage(plant, id),
    surface: plant.rowOf("crossing", id).surface,
    cause: { ruleId: "crossing-clearance" as const, against: { table: "crossing" as const, id }, spanId },
  }));
  const structures = plant
    .where("structure", "spanId", spanId)
    .filter((id) => !isFarBeside(plant, id))
    .map((id) => ({
      passage: structurePassage(plant, id),
      surface: structureSurfaces(plant.rowOf("structure", id).kind).over,
      cause: { ruleId: "structure-clearance" as const, against: { table: "structure" as const, id }, spanId },
    }));
  const ground = {
    passage: groundPassage(plant, spanId),
    surface: plant.settings().groundSurface,
    cause: { ruleId: "ground-clearance" as const, against: { table: "span" as const, id: spanId }, spanId },
  };
  return [...crossings, ...structures, ground].flatMap(({ passage, ...rest }) =>
    passage?.kind === "known" ? [{ passage, ...rest }] : [],
  );
}

/** Whether the line passes a structure far enough beside it, so that its height over it does not matter. */
function isFarBeside(plant: Plant, structureId: string): boolean {
  const { kind, besideM } = plant.rowOf("structure", structureId);
  const limit = clearanceLimitFor(plant, structureSurfaces(kind).beside);
  return limit !== undefined && besideM > 0 && besideM >= limit.limitM - noiseM;
}

/** Neighbouring stops, pair by pair. */
function piecesOf(stretches: readonly (readonly number[])[]): (readonly [fromM: number, toM: number])[] {
  return stretches.flatMap((stops) =>
    stops.slice(1).map((toM, index): readonly [number, number] => [stops[index] ?? toM, toM]),
  );
}
