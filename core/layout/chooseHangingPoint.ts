import { fail, ok, type Result } from "../model/result.ts";
import { cablesInSpan } from "../plant/cablePath.ts";
import { farPoleId, spansAtPole } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { roomAtPole, type Stays } from "./hangingPoints.ts";
import { reasonText, sideText } from "./placementReasons.ts";

/** A side of a pole, by the span that leaves it. */
export type PoleSide = { readonly spanId: string; readonly poleId: string };

/** Where a terminal comes to hang, and why not at the side first asked for. */
export type ChosenPoint = PoleSide & {
  readonly cableId: string;
  /** From the span's first pole, m. */
  readonly offsetM: number;
  readonly reason: string;
};

/**
 * The first side that takes a terminal at the standard distance: the one asked for, else another of the same pole, else one of
 * the pole at the span's other end.
 *
 * @param lengthM  length of the terminal along the strand, m, > 0
 * @param stays    whether a terminal that hangs now is in the way
 * @returns a fault with the reason of the side asked for where none takes it
 */
export function chooseHangingPoint(plant: Plant, asked: PoleSide, lengthM: number, stays: Stays): Result<ChosenPoint> {
  const cableId = cablesInSpan(plant, asked.spanId)[0];
  if (cableId === undefined)
    return fail(
      "no-cable",
      `No cable runs at ${sideText(plant, asked.spanId, asked.poleId)}.`,
      asked.spanId,
      "String the line first, or choose a span with a cable.",
    );
  const others = otherSides(plant, asked);
  const next = { spanId: asked.spanId, poleId: farPoleId(plant, asked.spanId, asked.poleId) };
  const sides = [asked, ...others, next, ...otherSides(plant, next)];
  const refused = roomAtPole(plant, asked.spanId, asked.poleId, stays);
  for (const side of sides) {
    if (roomAtPole(plant, side.spanId, side.poleId, stays).roomM < lengthM) continue;
    const cables = cablesInSpan(plant, side.spanId);
    const reason = side === asked ? "" : reasonText(plant, side, { ...asked, reason: refused.reason });
    const carried = cables.includes(cableId) ? cableId : (cables[0] ?? cableId);
    return ok({ ...side, cableId: carried, offsetM: standardOffsetM(plant, side), reason });
  }
  return fail(
    "no-room",
    `A terminal has no room at ${sideText(plant, asked.spanId, asked.poleId)}, nor at the other sides near it: ${refused.reason}.`,
    asked.poleId,
    "Choose another pole, or clear the strand there first.",
  );
}

/** The other sides of a side's pole that carry a cable, by span. */
export function otherSides(plant: Plant, { spanId, poleId }: PoleSide): PoleSide[] {
  return spansAtPole(plant, poleId)
    .filter((id) => id !== spanId && cablesInSpan(plant, id).length > 0)
    .map((id) => ({ spanId: id, poleId }));
}

/** The standard hanging point of a side, from the span's first pole, m. */
export function standardOffsetM(plant: Plant, { spanId, poleId }: PoleSide): number {
  const { standoffM } = plant.settings();
  const span = plant.rowOf("span", spanId);
  return span.fromPoleId === poleId ? standoffM : span.lengthM - standoffM;
}
