import { formatLength } from "../../core/units/formatLength.ts";
import type { LabelWish } from "./labelWishes.ts";
import type { Picture } from "./paint.ts";
import { groundPointPx, structurePlacePx } from "./sitePlace.ts";
import { zoomOf } from "./viewport.ts";

/** From this scale on the elevation of every measured ground point is written beside it. */
const elevationsFrom = 2.2;

/** What structures are and how high they stand, on their far side from the line. */
export function structureWishes({ scene, view, level, units, shown }: Picture, sizePx: number): LabelWish[] {
  return scene.structures.index.within(shown).flatMap((i): LabelWish[] => {
    const mark = scene.structures.marks[i];
    if (!mark) return [];
    const { x, y, heightPx, turnRad } = structurePlacePx(mark, view, level);
    const reach = heightPx / 2 + 3 + sizePx / 2;
    const spot = (away: number) => [x + mark.sideX * away, y + mark.sideY * away] as const;
    const text = `${mark.words}, ${formatLength(mark.heightM, units, "height")}`;
    return [{ text, turnRad, sizePx, weight: 400, places: [spot(reach), spot(-reach), spot(reach + sizePx + 2)] }];
  });
}

/** Elevations of measured ground points. */
export function elevationWishes({ scene, view, units, shown }: Picture, sizePx: number): LabelWish[] {
  if (zoomOf(view) < elevationsFrom) return [];
  return scene.groundPoints.index.within(shown).flatMap((i): LabelWish[] => {
    const mark = scene.groundPoints.marks[i];
    if (!mark) return [];
    const [x, y] = groundPointPx(mark, view);
    const { alongX, alongY, belowX, belowY } = mark.frame;
    const spot = (below: number) => [x + belowX * below, y + belowY * below] as const;
    const reach = 8 + sizePx / 2;
    return [
      {
        text: formatLength(mark.groundM, units, "height"),
        turnRad: Math.atan2(alongY, alongX),
        sizePx,
        weight: 400,
        places: [spot(reach + 6), spot(-reach), spot(reach + sizePx + 6)],
      },
    ];
  });
}
