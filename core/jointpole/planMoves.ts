import type { PoleScene } from "./poleScene.ts";
import type { PoleWire } from "./poleWires.ts";
import type { Stretch } from "./wholeHeight.ts";

/** Where every moved wire and ours would be attached. */
export type Plan = {
  readonly moved: readonly { readonly wire: PoleWire; readonly toM: number }[];
  readonly ourHeightM: number;
  /** All moves of others together, m. */
  readonly totalM: number;
};

/**
 * The plan that moves just these wires and ours, and those others least in all; of equal ones the one that moves ours least. Null
 * where there is none.
 *
 * Exact on whole counts: what is asked of two wires is a difference of their heights and what is asked of one is a stretch, so in a least
 * plan every height is its own present one, an end of a stretch, or one of these with differences added; those are looked through.
 */
export function leastPlan(scene: PoleScene, moved: readonly PoleWire[]): Plan | null {
  const { ours, others, stepM } = scene;
  const held = others.filter((one) => !moved.includes(one));
  const wires = [...moved, ours];
  if (wires.some((a) => wires.some((b) => a !== b && isNeverApart(scene, a, b)))) return null;
  const stretches = new Map(wires.map((wire) => [wire, scene.stretches(wire, held)]));
  if ([...stretches.values()].some((one) => one.length === 0)) return null;
  const spots = spotsOf(scene, stretches);
  let best: (Plan & { readonly ourMoveM: number }) | null = null;

  const place = (at: number, placed: ReadonlyMap<PoleWire, number>, totalM: number): void => {
    const wire = wires[at];
    if (!wire) return;
    for (const count of spots.get(wire) ?? []) {
      const byM = Math.abs(count * stepM - wire.heightM);
      if (wire !== ours && best && totalM + byM > best.totalM + stepM * 1e-6) return;
      if (![...placed].every(([other, there]) => keepApart(scene, [wire, count], [other, there]))) continue;
      if (wire !== ours) {
        place(at + 1, new Map([...placed, [wire, count]]), totalM + byM);
        continue;
      }
      if (best && totalM > best.totalM - stepM * 1e-6 && byM >= best.ourMoveM) return;
      best = {
        moved: [...placed].map(([one, there]) => ({ wire: one, toM: there * stepM })),
        ourHeightM: count * stepM,
        totalM,
        ourMoveM: byM,
      };
      return;
    }
  };
  place(0, new Map(), 0);
  return best;
}

type At = readonly [wire: PoleWire, count: number];

function keepApart({ apart }: PoleScene, [a, countA]: At, [b, countB]: At): boolean {
  return countA - countB >= apart(a, b) || countB - countA >= apart(b, a);
}

/** Whether two wires come too near whatever their heights here: an end at the other pole falls short by itself. */
function isNeverApart({ apart }: PoleScene, a: PoleWire, b: PoleWire): boolean {
  return apart(a, b) === Number.POSITIVE_INFINITY && apart(b, a) === Number.POSITIVE_INFINITY;
}

/** Counts a wire can have in a least plan, those nearest to its present height first. */
function spotsOf(
  { apart, stepM }: PoleScene,
  stretches: ReadonlyMap<PoleWire, readonly Stretch[]>,
): ReadonlyMap<PoleWire, readonly number[]> {
  const isFree = (wire: PoleWire, count: number) =>
    Number.isFinite(count) && (stretches.get(wire) ?? []).some(({ least, most }) => least <= count && count <= most);
  let spots = new Map<PoleWire, ReadonlySet<number>>();
  for (const [wire, ends] of stretches) {
    const present = [Math.floor(wire.heightM / stepM), Math.ceil(wire.heightM / stepM)];
    const finite = ends.flatMap(({ least, most }) => [least, most]).filter(Number.isFinite);
    spots.set(wire, new Set([...finite, ...present].filter((count) => isFree(wire, count))));
  }
  for (const _ of stretches) {
    const wider = new Map<PoleWire, ReadonlySet<number>>();
    for (const [wire, own] of spots) {
      const reached = [...spots]
        .filter(([other]) => other !== wire)
        .flatMap(([other, counts]) =>
          [...counts].flatMap((count) => [count + apart(wire, other), count - apart(other, wire)]),
        );
      wider.set(wire, new Set([...own, ...reached.filter((count) => isFree(wire, count))]));
    }
    spots = wider;
  }
  const offM = (wire: PoleWire, count: number) => Math.abs(count * stepM - wire.heightM);
  return new Map(
    [...spots].map(([wire, counts]) => [wire, [...counts].sort((a, b) => offM(wire, a) - offM(wire, b))] as const),
  );
}
