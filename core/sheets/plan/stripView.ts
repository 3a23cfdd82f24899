import { planeDistanceM } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { boundsOf } from "../paper/orientedBox.ts";
import type { PaperBox } from "../paper/paper.ts";
import type { Scale } from "../paper/scale.ts";
import { endMm, sideMm } from "./stripScale.ts";
import { contentPoints, linePoints, type StripStep, type UnitMap } from "./stripStep.ts";
import { toPaper, type View } from "./view.ts";

/** What every strip of a set is cut from. */
export type StripGround = {
  readonly plant: Plant;
  readonly units: UnitMap;
  readonly scale: Scale;
  readonly farthestM: number;
};

/** A view of these steps on a box, and whether line and living units fit it. */
export function stripView(
  { plant, units, scale, farthestM }: StripGround,
  steps: readonly StripStep[],
  box: PaperBox,
): { readonly view: View; readonly fits: boolean } {
  const line = linePoints(plant, steps);
  const [start, end] = [line[0], line.at(-1)];
  if (!(start && end)) throw new Error("a strip has no span");
  const turnRad =
    planeDistanceM(start, end) === 0 ? 0 : -Math.atan2(end.northM - start.northM, end.eastM - start.eastM);
  const draft: View = { scale, turnRad, ground: start, paper: [0, 0] };
  const shape = boundsOf(line.map((one) => toPaper(draft, one)));
  const all = boundsOf(contentPoints(plant, steps, units, farthestM).map((one) => toPaper(draft, one)));
  const isLow = all[3] - all[1] <= box.top - box.bottom - 2 * sideMm;
  const middle = isLow ? (all[1] + all[3]) / 2 : (shape[1] + shape[3]) / 2;
  const centred = (box.left + box.right) / 2 - (all[0] + all[2]) / 2;
  const across = Math.min(Math.max(centred, box.left + endMm - shape[0]), box.right - endMm - shape[2]);
  const isShort = shape[2] - shape[0] <= box.right - box.left - 2 * endMm;
  const holdsHouses = all[0] + across >= box.left + sideMm && all[2] + across <= box.right - sideMm;
  const paper: PaperPoint = [across, (box.bottom + box.top) / 2 - middle];
  return { view: { ...draft, paper }, fits: isLow && isShort && holdsHouses };
}
