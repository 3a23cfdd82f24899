import type { Plant } from "../../core/plant/plant.ts";
import type { OtherParties } from "./otherParties.ts";
import { type BoundedIndex, indexPoints } from "./placeIndex.ts";
import type { Places } from "./places.ts";

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

/** Poles of a route in the order of their file. */
export function poleMarks(plant: Plant, places: Places, parties: OtherParties): PoleMarks {
  const poles = [...plant.route().pole.values()];
  const eastM = new Float64Array(poles.length);
  const northM = new Float64Array(poles.length);
  const otherPartyCount = new Uint8Array(poles.length);
  poles.forEach(({ id }, i) => {
    const point = places.poleAt(id);
    eastM[i] = point.eastM;
    northM[i] = point.northM;
    otherPartyCount[i] = Math.min(255, parties.get(id)?.length ?? 0);
  });
  return {
    ids: poles.map((one) => one.id),
    tags: poles.map((one) => one.tag),
    eastM,
    northM,
    otherPartyCount,
    index: indexPoints(eastM, northM),
  };
}
