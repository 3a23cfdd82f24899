import { type RefKey, refsOf } from "../app/ref.ts";
import { grownBox } from "../canvas/box.ts";
import { refsWithin } from "../canvas/hitTest.ts";
import { terminalPlacePx } from "../canvas/hungPlace.ts";
import { housePx, ringPx } from "../canvas/level.ts";
import type { Picture } from "../canvas/paint.ts";
import { at } from "../canvas/spanMarks.ts";
import type { Box } from "../canvas/viewport.ts";

/** Rows a box encloses: those whose place lies in it, and spans with both ends in it. */
export function refsEnclosed(picture: Picture, box: Box): readonly RefKey[] {
  return [...refsWithin(picture, box), ...spanRefs(picture, box, isEnclosed), ...crossingRefs(picture, box)];
}

/** Rows that a box touches where their own place lies in it. */
const ownPlace = /^(slack|closure|guy|structure|groundPoint)\//;

/** Rows a box touches: whose symbol reaches into it, and spans that pass through it. */
export function refsTouched(picture: Picture, box: Box): readonly RefKey[] {
  const { scene, view } = picture;
  const grown = (px: number): Box => grownBox(box, px / view.pxPerM);
  const poles = scene.poles.index.within(grown(ringPx(view))).flatMap((i) => refsOf("pole", scene.poles.ids[i]));
  const houses = scene.houses.index
    .within(grown(housePx(view) / 2))
    .flatMap((i) => (scene.houses.marks[i]?.unitIds ?? []).flatMap((id) => refsOf("livingUnit", id)));
  const hungReach = grown(60);
  const terminals = scene.terminals.index.within(hungReach).flatMap((i) => {
    const mark = scene.terminals.marks[i];
    return mark && barTouches(picture, mark, box) ? refsOf("terminal", mark.id) : [];
  });
  const own = refsWithin(picture, box).filter((ref) => ownPlace.test(ref));
  return [
    ...poles,
    ...terminals,
    ...houses,
    ...own,
    ...spanRefs(picture, box, passesThrough),
    ...crossingRefs(picture, box),
  ];
}

/** Whether a segment has a point in a box; ends as `[east, north]`, m. */
export function passesThrough(box: Box, from: readonly [number, number], to: readonly [number, number]): boolean {
  let [startFrac, endFrac] = [0, 1];
  const sides = [
    [from[0], to[0] - from[0], box.westM, box.eastM],
    [from[1], to[1] - from[1], box.southM, box.northM],
  ] as const;
  for (const [origin, run, least, most] of sides) {
    if (run === 0) {
      if (origin < least || origin > most) return false;
      continue;
    }
    const [a, b] = [(least - origin) / run, (most - origin) / run];
    startFrac = Math.max(startFrac, Math.min(a, b));
    endFrac = Math.min(endFrac, Math.max(a, b));
  }
  return startFrac <= endFrac;
}

function isEnclosed(box: Box, from: readonly [number, number], to: readonly [number, number]): boolean {
  return [from, to].every(
    ([east, north]) => east >= box.westM && east <= box.eastM && north >= box.southM && north <= box.northM,
  );
}

function spanRefs({ scene: { spans } }: Picture, box: Box, isMeant: typeof passesThrough): RefKey[] {
  return spans.index.within(box).flatMap((i) => {
    const from = [at(spans.fromEastM, i), at(spans.fromNorthM, i)] as const;
    const to = [at(spans.toEastM, i), at(spans.toNorthM, i)] as const;
    return isMeant(box, from, to) ? refsOf("span", spans.ids[i]) : [];
  });
}

function crossingRefs({ scene: { crossings } }: Picture, box: Box): RefKey[] {
  return crossings.index.within(box).flatMap((i) => refsOf("crossing", crossings.marks[i]?.id));
}

function barTouches({ view }: Picture, mark: Parameters<typeof terminalPlacePx>[0], box: Box): boolean {
  const bar = terminalPlacePx(mark, view);
  const east = view.centreEastM + (bar.x - view.widthPx / 2) / view.pxPerM;
  const north = view.centreNorthM - (bar.y - view.heightPx / 2) / view.pxPerM;
  const halfM = bar.widthPx / 2 / view.pxPerM;
  const along = [Math.cos(bar.turnRad) * halfM, -Math.sin(bar.turnRad) * halfM] as const;
  const reach = grownBox(box, bar.heightPx / 2 / view.pxPerM);
  return passesThrough(reach, [east - along[0], north - along[1]], [east + along[0], north + along[1]]);
}
