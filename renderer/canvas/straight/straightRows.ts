import { cablePath } from "../../../core/plant/cablePath.ts";
import { farPoleId, lineAngleRad, spansAtPole } from "../../../core/plant/geometry.ts";
import type { Plant } from "../../../core/plant/plant.ts";

/** One span of a row in the direction the row runs. */
export type RowStep = { readonly spanId: string; readonly fromPoleId: string; readonly toPoleId: string };

/** Spans drawn one behind the other as one straight row: a cable's way, or a line of poles not strung yet. */
export type StraightRow = {
  readonly name: string;
  readonly cableId: string | null;
  readonly steps: readonly RowStep[];
};

/**
 * Every span of a route in exactly one row: cables first, those from the hub before their laterals, then what no cable follows,
 * beginning where it leaves a row. A span that carries two cables is drawn with the first.
 */
export function straightRows(plant: Plant): readonly StraightRow[] {
  const taken = new Set<string>();
  const rows = cablesFromHub(plant).flatMap((cableId) => cableRows(plant, cableId, taken));
  const reached = new Set(rows.flatMap((row) => row.steps.flatMap((step) => [step.fromPoleId, step.toPoleId])));
  const starts = [...reached, ...lineEnds(plant), ...plant.route().pole.keys()];
  for (const poleId of starts) {
    for (const spanId of spansAtPole(plant, poleId)) {
      if (taken.has(spanId)) continue;
      const steps = walkOn(plant, poleId, spanId, taken);
      const far = steps[0] && plant.rowOf("pole", steps[0].toPoleId);
      rows.push({ name: far?.line ?? "", cableId: null, steps });
      // laterals of what was just walked begin at its poles
      for (const step of steps) if (!reached.has(step.toPoleId)) starts.push(step.toPoleId);
    }
  }
  return rows;
}

function cablesFromHub(plant: Plant): readonly string[] {
  const depthOf = (cableId: string, guard = 0): number => {
    const closureId = plant.row("cable", cableId)?.fromClosureId ?? null;
    if (closureId === null || guard > 50) return 0;
    return 1 + depthOf(plant.rowOf("closure", closureId).cableId, guard + 1);
  };
  const cables = [...plant.route().cable.keys()].map((id, place) => ({ id, place, depth: depthOf(id) }));
  return cables.sort((a, b) => a.depth - b.depth || a.place - b.place).map((one) => one.id);
}

function cableRows(plant: Plant, cableId: string, taken: Set<string>): StraightRow[] {
  const { name } = plant.rowOf("cable", cableId);
  const rows: { name: string; cableId: string; steps: RowStep[] }[] = [];
  for (const { spanId, inPoleId, outPoleId } of cablePath(plant, cableId).steps) {
    if (taken.has(spanId)) continue;
    taken.add(spanId);
    const step = { spanId, fromPoleId: inPoleId, toPoleId: outPoleId };
    const row = rows.at(-1);
    if (row && row.steps.at(-1)?.toPoleId === inPoleId) row.steps.push(step);
    else rows.push({ name, cableId, steps: [step] });
  }
  return rows;
}

function lineEnds(plant: Plant): readonly string[] {
  const poles = [...plant.route().pole.values()].filter((one) => spansAtPole(plant, one.id).length === 1);
  return poles.sort((a, b) => a.order - b.order).map((one) => one.id);
}

/** Straight on from pole to pole until every span ahead is drawn already. */
function walkOn(plant: Plant, startId: string, firstId: string, taken: Set<string>): RowStep[] {
  const steps: RowStep[] = [];
  let [poleId, spanId]: [string, string | undefined] = [startId, firstId];
  while (spanId !== undefined) {
    taken.add(spanId);
    const toPoleId = farPoleId(plant, spanId, poleId);
    steps.push({ spanId, fromPoleId: poleId, toPoleId });
    const cameBy: string = spanId;
    const ahead = spansAtPole(plant, toPoleId).filter((one) => !taken.has(one));
    const turnRad = (one: string): number => lineAngleRad(plant, toPoleId, cameBy, one);
    [poleId, spanId] = [toPoleId, ahead.sort((a, b) => turnRad(a) - turnRad(b))[0]];
  }
  return steps;
}
