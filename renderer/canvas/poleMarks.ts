import type { Pole } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { boxBetween } from "./box.ts";
import type { OtherParties } from "./otherParties.ts";
import { type BoundedIndex, indexPoints, indexWithMoved } from "./placeIndex.ts";
import type { Places } from "./places.ts";
import type { Box } from "./viewport.ts";

/** Poles made ready for drawing. */
export type PoleMarks = {
  readonly ids: readonly string[];
  readonly tags: readonly string[];
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
  /** Other parties on the pole. */
  readonly otherPartyCount: Uint8Array;
  readonly index: BoundedIndex;
};

/** Makes the poles of a route in the order of their file; after an edit only what has changed is made anew. */
export function openPoleMarks(plant: Plant) {
  let former: Drawn | null = null;
  return (places: Places, parties: OtherParties): PoleMarks => {
    const rows = [...plant.route().pole.values()];
    former = (former && redrawn(former, rows, places, parties)) ?? drawn(rows, places, parties);
    return former.marks;
  };
}

/** Poles with what they were drawn from, and those that have moved since their index was made. */
type Drawn = {
  readonly rows: readonly Pole[];
  readonly places: Places;
  readonly parties: OtherParties;
  readonly index: BoundedIndex;
  readonly moved: ReadonlyMap<number, Box>;
  readonly marks: PoleMarks;
};

function drawn(rows: readonly Pole[], places: Places, parties: OtherParties): Drawn {
  const eastM = new Float64Array(rows.length);
  const northM = new Float64Array(rows.length);
  const otherPartyCount = new Uint8Array(rows.length);
  rows.forEach(({ id }, i) => {
    const point = places.poleAt(id);
    eastM[i] = point.eastM;
    northM[i] = point.northM;
    otherPartyCount[i] = Math.min(255, parties.get(id)?.length ?? 0);
  });
  const index = indexPoints(eastM, northM);
  const marks = {
    ids: rows.map((one) => one.id),
    tags: rows.map((one) => one.tag),
    eastM,
    northM,
    otherPartyCount,
    index,
  };
  return { rows, places, parties, index, moved: new Map(), marks };
}

/** The poles of before with those that have changed drawn anew; null where rows came, went or all of them may stand elsewhere. */
function redrawn(former: Drawn, rows: readonly Pole[], places: Places, parties: OtherParties): Drawn | null {
  if (former.places !== places || former.parties !== parties || former.rows.length !== rows.length) return null;
  if (rows.some((row, i) => row.id !== former.rows[i]?.id)) return null;
  const changed = rows.flatMap((row, i) => (row === former.rows[i] ? [] : [i]));
  const moved = new Map(former.moved);
  const eastM = former.marks.eastM.slice();
  const northM = former.marks.northM.slice();
  const tags = [...former.marks.tags];
  for (const i of changed) {
    const row = rows[i];
    if (!row) continue;
    const point = places.poleAt(row.id);
    eastM[i] = point.eastM;
    northM[i] = point.northM;
    tags[i] = row.tag;
    moved.set(i, boxBetween(point, point));
  }
  const index = indexWithMoved(former.index, moved);
  if (!index) return null;
  return { ...former, rows, moved, marks: { ...former.marks, tags, eastM, northM, index } };
}
