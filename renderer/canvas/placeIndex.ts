import Flatbush from "flatbush";
import type { Box } from "./viewport.ts";

/** Finds the things in a box of ground without looking at all of them. */
export type PlaceIndex = { readonly within: (box: Box) => readonly number[] };

/** An index over boxes of ground; answers with their positions in the list, ascending so that drawing order holds. */
export function indexBoxes(boxes: readonly Box[]): PlaceIndex {
  if (boxes.length === 0) return { within: () => [] };
  const index = new Flatbush(boxes.length);
  for (const box of boxes) index.add(box.westM, box.southM, box.eastM, box.northM);
  index.finish();
  return {
    within: (box) => index.search(box.westM, box.southM, box.eastM, box.northM).sort((a, b) => a - b),
  };
}

/** An index over points of the ground. */
export function indexPoints(eastM: Float64Array, northM: Float64Array): PlaceIndex {
  return indexBoxes(
    Array.from(eastM, (east, i) => {
      const north = northM[i] ?? 0;
      return { westM: east, eastM: east, southM: north, northM: north };
    }),
  );
}
