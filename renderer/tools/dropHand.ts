import { terminalWithPort } from "../../core/edits/portFree.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { portsOf } from "../../core/plant/terminalView.ts";
import { splitRef } from "../app/ref.ts";
import { hitAll } from "../canvas/hitTest.ts";
import { terminalPlacePx, tickPitchPx, tickPoint } from "../canvas/hungPlace.ts";
import type { Picture } from "../canvas/paint.ts";
import { groundAt } from "../canvas/viewport.ts";
import type { DropHand } from "./hand.ts";
import { toolWords } from "./words.ts";

/** The end of a drop under the hand at a pixel: the port there, or why it cannot be let go. */
export function dropHandAt(picture: Picture, plant: Plant, dropId: string, xPx: number, yPx: number): DropHand {
  const place = { kind: "drop", dropId, ...groundAt(picture.view, xPx, yPx) } as const;
  const hit = hitAll(picture, xPx, yPx)
    .map(splitRef)
    .find((one) => one.table === "terminal");
  if (!hit) return { ...place, target: null, refusal: toolWords.noTarget };
  const port = portAt(picture, hit.id, xPx, yPx) ?? firstFreePort(plant, hit.id);
  if (port === null)
    return { ...place, target: null, refusal: toolWords.noFreePort(plant.rowOf("terminal", hit.id).name) };
  const free = terminalWithPort(plant.route(), hit.id, port, dropId);
  return { ...place, target: { terminalId: hit.id, port }, refusal: free.ok ? null : free.fault.what };
}

/** The port whose tick is under a pixel; null where ticks are too small to be meant. */
function portAt({ scene, view, level }: Picture, terminalId: string, xPx: number, yPx: number): number | null {
  const mark = scene.terminals.marks[scene.terminals.positionOf.get(terminalId) ?? -1];
  if (!mark || level !== "labels") return null;
  const pitch = tickPitchPx(view);
  const place = terminalPlacePx(mark, view);
  let best: number | null = null;
  let leastPx = pitch;
  for (const tick of mark.ticks) {
    const [x, y] = tickPoint(place, mark, tick, pitch);
    const awayPx = Math.hypot(x - xPx, y - yPx);
    if (awayPx < leastPx) [best, leastPx] = [tick.port, awayPx];
  }
  return best;
}

function firstFreePort(plant: Plant, terminalId: string): number | null {
  return portsOf(plant, terminalId).find((one) => one.dropIds.length === 0 && !one.isReserved)?.port ?? null;
}
