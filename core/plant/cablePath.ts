import { spansAtPole } from "./geometry.ts";
import { defineQuery, type Plant } from "./plant.ts";

/** One span of a cable's way, in the direction the light goes. */
export type CableStep = {
  readonly spanId: string;
  /** True where the cable enters the span at its far pole. */
  readonly reversed: boolean;
  readonly inPoleId: string;
  readonly outPoleId: string;
  /** Distance along the route from the cable's feed end to where it enters the span, m. */
  readonly startM: number;
  readonly lengthM: number;
};

export type CablePath = {
  readonly steps: readonly CableStep[];
  readonly lengthM: number;
  /** The step through each span; the first one where the cable passes a span twice. */
  readonly stepBySpan: ReadonlyMap<string, CableStep>;
  /** Pole where two neighbouring steps do not meet, or null where the way is whole. */
  readonly gapAtPoleId: string | null;
};

/** The way of a cable along the route from its feed end, spans in order. */
export const cablePath = defineQuery("cable-path", (plant, cableId): CablePath => {
  const runs = plant.where("cableRun", "cableId", cableId).map((id) => plant.rowOf("cableRun", id));
  const steps: CableStep[] = [];
  const stepBySpan = new Map<string, CableStep>();
  let startM = 0;
  let gapAtPoleId: string | null = null;
  for (const run of runs.sort((a, b) => a.sequence - b.sequence)) {
    const span = plant.rowOf("span", run.spanId);
    const [inPoleId, outPoleId] = run.reversed ? [span.toPoleId, span.fromPoleId] : [span.fromPoleId, span.toPoleId];
    const before = steps.at(-1);
    if (before && before.outPoleId !== inPoleId) gapAtPoleId ??= before.outPoleId;
    const step = { spanId: span.id, reversed: run.reversed, inPoleId, outPoleId, startM, lengthM: span.lengthM };
    steps.push(step);
    if (!stepBySpan.has(span.id)) stepBySpan.set(span.id, step);
    startM += span.lengthM;
  }
  return { steps, stepBySpan, lengthM: startM, gapAtPoleId };
});

/** Ids of the cables lashed in a span, sorted. */
export const cablesInSpan = defineQuery("cables-in-span", (plant, spanId): readonly string[] =>
  [...new Set(plant.where("cableRun", "spanId", spanId).map((id) => plant.rowOf("cableRun", id).cableId))].sort(),
);

/** Ids of the cables that pass or end at a pole, span by span. */
export const cablesAtPole = defineQuery("cables-at-pole", (plant, poleId): readonly string[] => [
  ...new Set(spansAtPole(plant, poleId).flatMap((spanId) => cablesInSpan(plant, spanId))),
]);

/**
 * Distance along the route from a cable's feed end to a point of a span, m; null where the cable does not pass there.
 *
 * @param offsetM  from the span's first pole, m
 */
export function stationM(plant: Plant, cableId: string, spanId: string, offsetM: number): number | null {
  const step = cablePath(plant, cableId).stepBySpan.get(spanId);
  if (!step) return null;
  return step.startM + (step.reversed ? step.lengthM - offsetM : offsetM);
}

/** Distance along the route from a cable's feed end to a pole, m; null where the cable does not pass there. */
export function poleStationM(plant: Plant, cableId: string, poleId: string): number | null {
  for (const step of cablePath(plant, cableId).steps) {
    if (step.inPoleId === poleId) return step.startM;
    if (step.outPoleId === poleId) return step.startM + step.lengthM;
  }
  return null;
}

/** Ids of the coils on a cable, from the feed end. */
export const coilsAlong = defineQuery("coils-along", (plant, cableId): readonly string[] =>
  alongCable(
    plant,
    cableId,
    plant.where("slack", "cableId", cableId).map((id) => plant.rowOf("slack", id)),
  ),
);

/** Ids of the terminals on a cable, from the feed end. */
export const terminalsAlong = defineQuery("terminals-along", (plant, cableId): readonly string[] =>
  alongCable(
    plant,
    cableId,
    plant.where("terminal", "cableId", cableId).map((id) => plant.rowOf("terminal", id)),
  ),
);

/** Ids of the closures on a cable, from the feed end. */
export const closuresAlong = defineQuery("closures-along", (plant, cableId): readonly string[] =>
  alongCable(
    plant,
    cableId,
    plant.where("closure", "cableId", cableId).map((id) => plant.rowOf("closure", id)),
  ),
);

/**
 * Sheath of a cable, m: what lies along the spans, what waits in coils, and both together.
 */
export const sheathLength = defineQuery("sheath-length", (plant, cableId) => {
  const spansM = cablePath(plant, cableId).lengthM;
  const coilsM = plant
    .where("slack", "cableId", cableId)
    .reduce((sum, id) => sum + plant.rowOf("slack", id).storedM, 0);
  return { spansM, coilsM, totalM: spansM + coilsM };
});

/** Coils of a cable as stations from the feed end, m, with the sheath waiting in all coils up to there, m. */
const coilSums = defineQuery("coil-sums", (plant, cableId) => {
  const sums: { readonly atM: number; readonly storedM: number }[] = [];
  let storedM = 0;
  for (const id of coilsAlong(plant, cableId)) {
    const coil = plant.rowOf("slack", id);
    const atM = stationM(plant, cableId, coil.spanId, coil.offsetM);
    if (atM === null) break;
    storedM += coil.storedM;
    sums.push({ atM, storedM });
  }
  return sums;
});

/**
 * Sheath from a cable's feed end to a point of a span, coils passed on the way and at the point itself included, m;
 * null where it does not pass there.
 */
export function sheathToM(plant: Plant, cableId: string, spanId: string, offsetM: number): number | null {
  const here = stationM(plant, cableId, spanId, offsetM);
  if (here === null) return null;
  return here + (coilSums(plant, cableId).findLast((coil) => coil.atM <= here)?.storedM ?? 0);
}

type Hung = { readonly id: string; readonly spanId: string; readonly offsetM: number };

function alongCable(plant: Plant, cableId: string, hung: readonly Hung[]): readonly string[] {
  return hung
    .map((one) => ({ id: one.id, at: stationM(plant, cableId, one.spanId, one.offsetM) ?? Number.POSITIVE_INFINITY }))
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
    .map((one) => one.id);
}
