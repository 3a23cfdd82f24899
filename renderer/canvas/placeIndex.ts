import Flatbush from "flatbush";
import { boxOfBoth, meets } from "./box.ts";
import { onFirstUse } from "./onFirstUse.ts";
import type { Box } from "./viewport.ts";

/** So few finds are sorted faster than the whole list is walked. */
const fewCount = 200;

/** Finds the things in a box of ground without looking at all of them. */
export type PlaceIndex = { readonly within: (box: Box) => readonly number[] };

/** An index that knows the ground it covers; null where it holds nothing. */
export type BoundedIndex = PlaceIndex & { readonly box: Box | null };

/** An index over boxes of ground; answers with their positions in the list, ascending so that drawing order holds. */
export function indexBoxes(boxes: readonly Box[]): BoundedIndex {
  return filled(boxes.length, (index) => {
    for (const { westM, southM, eastM, northM } of boxes) index.add(westM, southM, eastM, northM);
  });
}

/** An index over points of the ground. */
export function indexPoints(eastM: Float64Array, northM: Float64Array): BoundedIndex {
  return filled(eastM.length, (index) => {
    eastM.forEach((east, i) => {
      const north = northM[i] ?? 0;
      index.add(east, north, east, north);
    });
  });
}

/** An index over marks that each stand at a point of the ground. */
export function indexMarks(marks: readonly { readonly eastM: number; readonly northM: number }[]): BoundedIndex {
  return filled(marks.length, (index) => {
    for (const { eastM, northM } of marks) index.add(eastM, northM, eastM, northM);
  });
}

function filled(count: number, fill: (index: Flatbush) => void): BoundedIndex {
  if (count === 0) return { box: null, within: () => [] };
  const index = new Flatbush(count);
  fill(index);
  index.finish();
  const all = onFirstUse(() => Array.from({ length: count }, (_, i) => i));
  return {
    box: { westM: index.minX, southM: index.minY, eastM: index.maxX, northM: index.maxY },
    within: (box) => {
      // the whole route in view is the dearest search of all, and its answer is known
      if (isWithin(index, box)) return all();
      const found = index.search(box.westM, box.southM, box.eastM, box.northM);
      return found.length < fewCount ? found.sort((a, b) => a - b) : inOrder(all(), found);
    },
  };
}

/** Marks what was found and walks the list: sorting so many takes longer. */
function inOrder(all: readonly number[], found: readonly number[]): readonly number[] {
  const isFound = new Uint8Array(all.length);
  for (const i of found) isFound[i] = 1;
  return all.filter((i) => isFound[i] === 1);
}

function isWithin({ minX, minY, maxX, maxY }: Flatbush, { westM, southM, eastM, northM }: Box): boolean {
  return minX >= westM && maxX <= eastM && minY >= southM && maxY <= northM;
}

/** More things than this are not kept beside an index: it is made anew. */
const mostBeside = 64;

/**
 * An index after some of its things have moved, without making it anew; null where so many have moved that it is better made anew.
 *
 * @param moved  where each thing that is no longer where the index has it stands now, by position
 */
export function indexWithMoved(index: BoundedIndex, moved: ReadonlyMap<number, Box>): BoundedIndex | null {
  if (moved.size > mostBeside) return null;
  return {
    box: [...moved.values()].reduce<Box | null>(boxOfBoth, index.box),
    within: (box) => {
      const stayed = index.within(box).filter((i) => !moved.has(i));
      const come = [...moved].flatMap(([i, here]) => (meets(here, box) ? [i] : []));
      return come.length === 0 ? stayed : [...stayed, ...come].sort((a, b) => a - b);
    },
  };
}
