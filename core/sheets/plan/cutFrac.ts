import type { Plant } from "../../plant/plant.ts";
import type { Step } from "../../plant/spanRuns.ts";

/** Places in a span where a strip may be cut, best first. */
const cutFracs = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74] as const;

/** Where a span is best cut: off crossings and off whatever hangs on it. */
export function cutFrac(plant: Plant, step: Step): number {
  const reversed = plant.rowOf("span", step.spanId).fromPoleId !== step.fromPoleId;
  const things = [
    ...plant
      .where("crossing", "spanId", step.spanId)
      .map((id) => plant.rowOf("crossing", id))
      .map((one) => ({ ...one, roomM: one.widthM / 2 + 5 })),
    ...plant.where("terminal", "spanId", step.spanId).map((id) => ({ ...plant.rowOf("terminal", id), roomM: 6 })),
    ...plant.where("slack", "spanId", step.spanId).map((id) => ({ ...plant.rowOf("slack", id), roomM: 5 })),
    ...plant.where("closure", "spanId", step.spanId).map((id) => ({ ...plant.rowOf("closure", id), roomM: 5 })),
  ];
  const crowding = (frac: number) => {
    const atM = (reversed ? 1 - frac : frac) * step.lengthM;
    return things.filter((one) => Math.abs(one.offsetM - atM) < one.roomM).length;
  };
  const fewest = Math.min(...cutFracs.map(crowding));
  return cutFracs.find((frac) => crowding(frac) === fewest) ?? 0.5;
}
