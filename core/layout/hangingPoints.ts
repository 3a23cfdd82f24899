import { cablePath } from "../plant/cablePath.ts";
import { climbingSpace } from "../plant/climbingSpace.ts";
import { farPoleId, type Point, pointOnSpan } from "../plant/geometry.ts";
import { hungInSpan } from "../plant/hanging.ts";
import type { Plant } from "../plant/plant.ts";

/** A side of a pole where a terminal may hang at the standard distance. */
export type HangingPoint = Point & {
  readonly cableId: string;
  readonly spanId: string;
  readonly poleId: string;
  /** From the span's first pole, m. */
  readonly offsetM: number;
  /** From the cable's feed end, m. */
  readonly stationM: number;
  /** Longest terminal that fits, m. */
  readonly roomM: number;
};

/** A side of a pole where none may hang, and why. */
export type RefusedPoint = Omit<HangingPoint, "roomM"> & { readonly reason: string };

/** Tells whether a terminal stays where it hangs while places are looked for. */
export type Stays = (terminalId: string) => boolean;

/** A nanometre: 36 in less 30 in must hold half of a terminal of 12 in, which binary fractions of a metre miss by a hair. */
const roundingM = 1e-9;

/** Every side of every pole along a cable, at the standard distance, judged; both lists from the feed end. */
export function hangingPoints(
  plant: Plant,
  cableId: string,
  stays: Stays,
): { readonly usable: readonly HangingPoint[]; readonly refused: readonly RefusedPoint[] } {
  const usable: HangingPoint[] = [];
  const refused: RefusedPoint[] = [];
  const { standoffM, hangingGapM } = plant.settings();
  const shortestM = shortestModelM(plant);
  for (const step of cablePath(plant, cableId).steps) {
    let taken: HangingPoint | null = null;
    for (const poleId of [step.inPoleId, step.outPoleId]) {
      const alongM = poleId === step.inPoleId ? standoffM : step.lengthM - standoffM;
      const offsetM = step.reversed ? step.lengthM - alongM : alongM;
      const place = { cableId, spanId: step.spanId, poleId, offsetM, stationM: step.startM + alongM };
      const point = { ...place, ...pointOnSpan(plant, step.spanId, offsetM) };
      const { roomM, reason } = roomAtPole(plant, step.spanId, poleId, stays);
      const apartM = taken === null ? Number.POSITIVE_INFINITY : Math.abs(alongM - (taken.stationM - step.startM));
      if (roomM < shortestM) refused.push({ ...point, reason });
      else if (taken !== null && apartM < longestModelM(plant) + hangingGapM)
        refused.push({ ...point, reason: "the span is too short for a terminal at each end" });
      else {
        taken = { ...point, roomM };
        usable.push(taken);
      }
    }
  }
  return { usable, refused };
}

/**
 * How long a terminal may be that hangs at the standard distance from a pole in a span, and what limits it.
 *
 * @returns roomM: m, negative where the place itself is taken, minus infinity where nothing may hang there at all
 */
export function roomAtPole(
  plant: Plant,
  spanId: string,
  poleId: string,
  stays: Stays,
): { readonly roomM: number; readonly reason: string } {
  const span = plant.rowOf("span", spanId);
  const pole = plant.rowOf("pole", poleId);
  const { standoffM, hangingGapM, minSpanM } = plant.settings();
  const none = Number.NEGATIVE_INFINITY;
  if (!pole.terminalAllowed) return { roomM: none, reason: `no terminal may hang beside pole ${pole.tag}` };
  if (span.strandSectionId === null) return { roomM: none, reason: "there is no strand in the span" };
  const farPole = plant.rowOf("pole", farPoleId(plant, spanId, poleId));
  const tooShort = `the span from pole ${pole.tag} to pole ${farPole.tag} is too short`;
  if (span.lengthM < Math.max(minSpanM, 2 * standoffM)) return { roomM: none, reason: tooShort };
  const offsetM = span.fromPoleId === poleId ? standoffM : span.lengthM - standoffM;
  const limits = [
    {
      roomM: 2 * (standoffM - climbingSpace(plant, poleId).spaceM),
      reason: `a terminal would reach into the climbing space of pole ${pole.tag}`,
    },
    { roomM: 2 * (span.lengthM - standoffM - climbingSpace(plant, farPole.id).spaceM), reason: tooShort },
    ...hungInSpan(plant, spanId)
      .filter((hung) => hung.terminalId === null || stays(hung.terminalId))
      .map((hung) => ({
        roomM: 2 * (Math.abs(offsetM - hung.offsetM) - hung.halfM - hangingGapM),
        reason: `${hung.name} hangs there`,
      })),
  ];
  const { roomM, reason } = limits.reduce((least, one) => (one.roomM < least.roomM ? one : least));
  return { roomM: roomM + roundingM, reason };
}

function modelLengthsM(plant: Plant): number[] {
  return plant.all("terminalModel").map((id) => plant.rowOf("terminalModel", id).lengthM);
}

function shortestModelM(plant: Plant): number {
  return Math.min(...modelLengthsM(plant));
}

function longestModelM(plant: Plant): number {
  return Math.max(...modelLengthsM(plant));
}
