import { evenDropsByStep } from "../../core/layout/evenDrops.ts";
import { runToM } from "../../core/plant/dropView.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { portCounts } from "../../core/plant/terminalView.ts";

/** What evening out would come to. */
export type EvenPlan = {
  /** Drops that go to another terminal, and terminals that gain or lose one. */
  readonly movedCount: number;
  readonly terminalCount: number;
  /** All drops together, m, longer or shorter than now. */
  readonly runChangeM: number;
  /** Emptiest and fullest terminal, used ports in percent of all, before and after. */
  readonly before: readonly [number, number];
  readonly after: readonly [number, number];
};

/** Works out what evening out terminals would come to, step by step; null where nothing gets evener. */
export function* evenPlan(
  plant: Plant,
  terminalIds: readonly string[],
  extraDropM: number,
): Generator<void, EvenPlan | null> {
  const changed = yield* evenDropsByStep(plant, terminalIds, extraDropM);
  const moved = changed.filter((one) => one.terminalId !== plant.rowOf("drop", one.id).terminalId);
  if (moved.length === 0) return null;
  const gains = new Map<string, number>();
  const add = (id: string, by: number) => gains.set(id, (gains.get(id) ?? 0) + by);
  let runChangeM = 0;
  for (const one of moved) {
    const before = plant.rowOf("drop", one.id);
    add(before.terminalId, -1);
    add(one.terminalId, 1);
    runChangeM += runToM(plant, one.livingUnitId, one.terminalId) - runToM(plant, one.livingUnitId, before.terminalId);
  }
  const fillOf = (count: (id: string, used: number) => number): readonly [number, number] => {
    const fills = terminalIds.map((id) => {
      const { used, total } = portCounts(plant, id);
      return Math.round((100 * count(id, used)) / total);
    });
    return [Math.min(...fills), Math.max(...fills)];
  };
  return {
    movedCount: moved.length,
    terminalCount: [...gains.values()].filter((one) => one !== 0).length,
    runChangeM,
    before: fillOf((_, used) => used),
    after: fillOf((id, used) => used + (gains.get(id) ?? 0)),
  };
}
