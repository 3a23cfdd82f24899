import { cablePath, stationM, terminalsAlong } from "../../core/plant/cablePath.ts";
import { hungInSpan } from "../../core/plant/hanging.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { toolWords } from "./words.ts";

/** A place along a span that a dragged terminal is drawn to, and what it is. */
export type Snap = { readonly offsetM: number; readonly words: string };

/** Nearer than this to such a place, what is dragged is drawn to it, px on screen whatever the scale. */
export const snapReachPx = 9;

/**
 * Places along a span where a terminal is meant to hang: the standard distance from both poles, the middle, midway between the
 * terminals before and after it on its cable, beside whatever hangs there already at the company's gap, and the poles themselves
 * with the bar just clear of the centre line.
 */
export function strandSnaps(plant: Plant, terminalId: string, spanId: string): readonly Snap[] {
  const { standoffM, hangingGapM } = plant.settings();
  const { lengthM } = plant.rowOf("span", spanId);
  const halfM = plant.rowOf("terminalModel", plant.rowOf("terminal", terminalId).terminalModelId).lengthM / 2;
  const beside = hungInSpan(plant, spanId)
    .filter((one) => one.terminalId !== terminalId)
    .flatMap(({ offsetM, halfM: theirsM, name }) => {
      const awayM = theirsM + halfM + hangingGapM;
      const words = toolWords.besideSnap(name);
      return [
        { offsetM: offsetM - awayM, words },
        { offsetM: offsetM + awayM, words },
      ];
    });
  const all = [
    { offsetM: standoffM, words: toolWords.standardSnap },
    { offsetM: lengthM - standoffM, words: toolWords.standardSnap },
    { offsetM: lengthM / 2, words: toolWords.middleSnap },
    ...midway(plant, terminalId, spanId),
    ...beside,
    { offsetM: halfM, words: toolWords.poleSnap },
    { offsetM: lengthM - halfM, words: toolWords.poleSnap },
  ];
  return all.filter((one) => one.offsetM > 0 && one.offsetM < lengthM);
}

/** Where the terminal hangs as far from the one before it as from the one after it along the cable. */
function midway(plant: Plant, terminalId: string, spanId: string): readonly Snap[] {
  const { cableId } = plant.rowOf("terminal", terminalId);
  const step = cablePath(plant, cableId).stepBySpan.get(spanId);
  if (!step) return [];
  const others = terminalsAlong(plant, cableId).filter((id) => id !== terminalId);
  return others.slice(1).flatMap((nextId, i): Snap[] => {
    const [former, next] = [plant.rowOf("terminal", others[i] ?? nextId), plant.rowOf("terminal", nextId)];
    const formerM = stationM(plant, cableId, former.spanId, former.offsetM);
    const nextM = stationM(plant, cableId, next.spanId, next.offsetM);
    if (formerM === null || nextM === null) return [];
    const enteredM = (formerM + nextM) / 2 - step.startM;
    const offsetM = step.reversed ? step.lengthM - enteredM : enteredM;
    return [{ offsetM, words: toolWords.midwaySnap(former.name, next.name) }];
  });
}

/**
 * The place an offset is drawn to, or null where none is near; of equally near ones the first.
 *
 * @param pxPerM  scale along the span as drawn
 */
export function nearestSnap(snaps: readonly Snap[], offsetM: number, pxPerM: number): Snap | null {
  let best: Snap | null = null;
  let leastPx = snapReachPx;
  for (const snap of snaps) {
    const awayPx = Math.abs(snap.offsetM - offsetM) * pxPerM;
    if (awayPx < leastPx) [best, leastPx] = [snap, awayPx];
  }
  return best;
}
