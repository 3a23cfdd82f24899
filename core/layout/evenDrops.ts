import { drained } from "../assignment/drained.ts";
import { type Choice, evenFill, type Place, unevenness } from "../assignment/evenFill.ts";
import type { Drop } from "../model/tables.ts";
import { forbiddenOver } from "../plant/dropPassing.ts";
import { planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { portCounts, terminalHang } from "../plant/terminalView.ts";
import { groupBy } from "./groupBy.ts";
import { openNearIndex } from "./nearIndex.ts";
import { portsAt } from "./portsAt.ts";

/** So many metres of drop for one unit of unevenness buy every gain: one drop moved is worth more than all drops are long. */
const highestWeight = 1e4;
/** Halvings of the weight's range, on a scale of powers. */
const steps = 24;

/**
 * Drops moved between terminals so that all are filled as nearly alike as a limit on the length of drop allows.
 *
 * Pinned drops stay, no drop moves beyond reach or where none may pass, and no terminal is filled into its spare or reserved ports. Of the
 * trade-offs that some price of a metre makes the best, the evenest within the limit is taken. A terminal that changes has its ports given anew.
 *
 * @param terminalIds  terminals to even out, pinned ones too: it is their drops that move
 * @param extraDropM   all drops together may become longer by this, m, 0 or more
 * @returns drops that change, with their new terminal and port; none where nothing gets evener
 */
export function evenDrops(plant: Plant, terminalIds: readonly string[], extraDropM: number): readonly Drop[] {
  return drained(evenDropsByStep(plant, terminalIds, extraDropM));
}

/** The same cut into short steps, for a page that must not wait for the whole. */
export function* evenDropsByStep(
  plant: Plant,
  terminalIds: readonly string[],
  extraDropM: number,
): Generator<void, readonly Drop[]> {
  const desk = yield* openDesk(plant, terminalIds);
  const { drops, present, choices, places } = desk;
  const runM = (placeOf: readonly number[]) =>
    placeOf.reduce((sum, place, index) => sum + (choices[index]?.find((one) => one.place === place)?.cost ?? 0), 0);
  const measure = (placeOf: readonly number[]) => unevenness(loadsOf(placeOf, places.length), places);
  const limitM = runM(present) + extraDropM + 1e-6;
  let best = present;
  const tryWeight = function* (weight: number): Generator<void, boolean> {
    const found = yield* evenFill(present, choices, places, weight);
    if (runM(found) > limitM) return false;
    if (measure(found) < measure(best) - 1e-9) best = found;
    return true;
  };
  if (!(yield* tryWeight(highestWeight))) {
    let [low, high] = [-3, Math.log10(highestWeight)];
    for (let step = 0; step < steps; step += 1) {
      const middle = (low + high) / 2;
      if (yield* tryWeight(10 ** middle)) low = middle;
      else high = middle;
    }
  }
  return yield* rowsOf(plant, terminalIds, drops, { present, best });
}

/** How many of the drops each place holds. */
function loadsOf(placeOf: readonly number[], placeCount: number): readonly number[] {
  const loads = Array.from({ length: placeCount }, () => 0);
  for (const place of placeOf) loads[place] = (loads[place] ?? 0) + 1;
  return loads;
}

type Desk = {
  readonly drops: readonly Drop[];
  /** For each drop its terminal, by place in the list. */
  readonly present: readonly number[];
  readonly choices: readonly (readonly Choice[])[];
  readonly places: readonly Place[];
};

function* openDesk(plant: Plant, terminalIds: readonly string[]): Generator<void, Desk> {
  const { dropReachM, sparePortCount } = plant.settings();
  const hangs: ReturnType<typeof terminalHang>[] = [];
  for (const id of terminalIds) {
    hangs.push(terminalHang(plant, id));
    yield;
  }
  const index = openNearIndex(hangs, dropReachM);
  const desk = { drops: [] as Drop[], present: [] as number[], choices: [] as Choice[][], places: [] as Place[] };
  for (const [place, terminalId] of terminalIds.entries()) {
    yield;
    const own = dropsAt(plant, terminalId);
    const moving = own.filter((one) => !one.pinned);
    for (const drop of moving) {
      const unit = plant.rowOf("livingUnit", drop.livingUnitId);
      const near = index.near(unit).map((one) => ({ place: one.index, cost: one.distanceM }));
      const hang = hangs[place];
      const here = { place, cost: hang ? planeDistanceM(hang, unit) : 0 };
      desk.drops.push(drop);
      desk.present.push(place);
      // A drop that is beyond reach or goes where none may already may stay where it is.
      const isWay = (to: number) => {
        const from = hangs[to];
        return from !== undefined && !forbiddenOver(plant, from, unit);
      };
      desk.choices.push([here, ...near.filter((one) => one.place !== place && isWay(one.place))]);
    }
    const { total, reserved } = portCounts(plant, terminalId);
    const fixedCount = own.length - moving.length;
    const capacity = Math.max(moving.length, total - reserved - sparePortCount - fixedCount);
    desk.places.push({ capacity, fixedCount, size: total });
  }
  return desk;
}

function* rowsOf(
  plant: Plant,
  terminalIds: readonly string[],
  drops: readonly Drop[],
  { present, best }: { readonly present: readonly number[]; readonly best: readonly number[] },
): Generator<void, readonly Drop[]> {
  const changed = new Set(best.flatMap((place, index) => (place === present[index] ? [] : [place, present[index]])));
  const hungAt = groupBy(
    drops.map((drop, index) => ({ drop, terminalId: terminalIds[best[index] ?? -1] ?? "" })),
    (one) => one.terminalId,
  );
  const rows: Drop[] = [];
  for (const [place, terminalId] of terminalIds.entries()) {
    if (!changed.has(place)) continue;
    const hung = (hungAt.get(terminalId) ?? []).map((one) => one.drop);
    const pinned = dropsAt(plant, terminalId).filter((one) => one.pinned);
    rows.push(...portsAt(plant, terminalId, hung, pinned));
    yield;
  }
  return rows;
}

function dropsAt(plant: Plant, terminalId: string): readonly Drop[] {
  return plant.where("drop", "terminalId", terminalId).map((id) => plant.rowOf("drop", id));
}
