import { type RefKey, refKey } from "../app/ref.ts";
import type { Scene } from "./scene.ts";
import { at } from "./spanMarks.ts";

export type Direction = "left" | "right" | "up" | "down";

const headings = { left: [-1, 0], right: [1, 0], up: [0, 1], down: [0, -1] } as const;

/** Off to the side counts this much more than straight ahead. */
const sideWeight = 2.5;

/**
 * The pole or terminal one comes to from a point when walking in a direction, or null where there is none ahead.
 *
 * @param from  point on the route's grid, m
 * @param leaving  the row one stands on
 * @param isOverAll  whether terminals are come to as well; else poles alone
 * @param isShown    whether rows of a kind are seen; what is not is walked past
 */
export function neighbour(
  scene: Scene,
  from: { readonly eastM: number; readonly northM: number },
  direction: Direction,
  leaving: RefKey | null,
  isOverAll: boolean,
  isShown: (kind: "pole" | "terminal") => boolean = () => true,
): RefKey | null {
  const [east, north] = headings[direction];
  let best: { readonly ref: RefKey; readonly cost: number } | null = null;
  const weigh = (ref: RefKey, eastM: number, northM: number): void => {
    if (ref === leaving) return;
    const ahead = (eastM - from.eastM) * east + (northM - from.northM) * north;
    const aside = Math.abs((eastM - from.eastM) * north - (northM - from.northM) * east);
    if (ahead <= 0.01 || aside > ahead * 2.5) return;
    const cost = ahead + aside * sideWeight;
    if (!best || cost < best.cost) best = { ref, cost };
  };
  if (isShown("pole"))
    scene.poles.ids.forEach((id, i) => {
      weigh(refKey("pole", id), at(scene.poles.eastM, i), at(scene.poles.northM, i));
    });
  if (isOverAll && isShown("terminal"))
    for (const mark of scene.terminals.marks) weigh(refKey("terminal", mark.id), mark.eastM, mark.northM);
  return (best as { readonly ref: RefKey } | null)?.ref ?? null; // the compiler does not see the closure's writes
}

/** The pole nearest to a point: where a walk by keys begins. */
export function nearestPole(scene: Scene, eastM: number, northM: number): RefKey | null {
  let best = -1;
  let leastM = Number.POSITIVE_INFINITY;
  scene.poles.eastM.forEach((east, i) => {
    const away = Math.hypot(east - eastM, at(scene.poles.northM, i) - northM);
    if (away < leastM) [best, leastM] = [i, away];
  });
  const id = scene.poles.ids[best];
  return id === undefined ? null : refKey("pole", id);
}
