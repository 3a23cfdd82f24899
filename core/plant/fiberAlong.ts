import type { Slack } from "../model/tables.ts";
import { cablePath, coilsAlong, sheathToM } from "./cablePath.ts";
import { hungSlackM, spanSlackM } from "./hungSlack.ts";
import { defineQuery, type Plant } from "./plant.ts";

/** A stretch of a cable's fiber: along a span, or in a coil at one place of it. */
export type FiberPiece = {
  /** Fiber from the cable's feed end, m. */
  readonly startM: number;
  readonly endM: number;
  readonly spanId: string;
  /** From the span's first pole, m; the same in a coil. */
  readonly startOffsetM: number;
  readonly endOffsetM: number;
  readonly slackId: string | null;
};

/** Fiber over sheath of a cable. */
function excess(plant: Plant, cableId: string): number {
  return 1 + plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId).fiberExcessFrac;
}

/**
 * Fiber from a cable's feed end to a point of a span, m: sheath as it hangs, coils on the way and at the point itself, and the excess of
 * fiber over sheath; null where the cable does not pass there.
 */
export function fiberToM(plant: Plant, cableId: string, spanId: string, offsetM: number): number | null {
  const sheathM = sheathToM(plant, cableId, spanId, offsetM);
  if (sheathM === null) return null;
  return (sheathM + hungSlackM(plant, cableId, spanId, offsetM)) * excess(plant, cableId);
}

/** A cable's fiber from its feed end, piece by piece: what `fiberToM` sums up. */
export const fiberPieces = defineQuery("fiber-pieces", (plant, cableId): readonly FiberPiece[] => {
  const perSheath = excess(plant, cableId);
  const coilsOf = coilsBySpan(plant, cableId);
  const pieces: FiberPiece[] = [];
  let atM = 0;
  const lay = (fiberM: number, piece: Pick<FiberPiece, "spanId" | "startOffsetM" | "endOffsetM" | "slackId">) => {
    if (fiberM > 0) pieces.push({ startM: atM, endM: atM + fiberM, ...piece });
    atM += Math.max(0, fiberM);
  };
  for (const { spanId, reversed, lengthM } of cablePath(plant, cableId).steps) {
    const perSpan = (1 + spanSlackM(plant, spanId, lengthM) / lengthM) * perSheath;
    let fromM = reversed ? lengthM : 0;
    const along = (toM: number) => {
      lay(Math.abs(toM - fromM) * perSpan, { spanId, startOffsetM: fromM, endOffsetM: toM, slackId: null });
      fromM = toM;
    };
    for (const { id, offsetM, storedM } of coilsOf.get(spanId) ?? []) {
      along(offsetM);
      lay(storedM * perSheath, { spanId, startOffsetM: offsetM, endOffsetM: offsetM, slackId: id });
    }
    coilsOf.delete(spanId);
    along(reversed ? 0 : lengthM);
  }
  return pieces;
});

/** Coils of a cable by the span they hang in, from the feed end. */
function coilsBySpan(plant: Plant, cableId: string): Map<string, Slack[]> {
  const bySpan = new Map<string, Slack[]>();
  for (const id of coilsAlong(plant, cableId)) {
    const coil = plant.rowOf("slack", id);
    const there = bySpan.get(coil.spanId);
    if (there) there.push(coil);
    else bySpan.set(coil.spanId, [coil]);
  }
  return bySpan;
}
