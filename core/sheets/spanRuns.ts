import { cablePath } from "../plant/cablePath.ts";
import { farPoleId, spansAtPole } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { cablesInOrder } from "./cableOrder.ts";
import { byText } from "./sorting.ts";

/** A span walked in one direction. */
export type Step = {
  readonly spanId: string;
  readonly fromPoleId: string;
  readonly toPoleId: string;
  readonly lengthM: number;
};

/** Spans that follow each other and are drawn together; every span of the route is in exactly one run. */
export type SpanRun = {
  /** The cable whose way this is; null for poles that no cable reaches yet. */
  readonly cableId: string | null;
  /** Distance along that cable to the run's start, m; 0 without a cable. */
  readonly startM: number;
  readonly steps: readonly Step[];
};

/**
 * The whole route as runs: each cable's way from its feed end without the spans an earlier cable has already shown, then what no
 * cable reaches, walked from its ends. Cables from the hub come first, then by name.
 */
export function spanRuns(plant: Plant): readonly SpanRun[] {
  const shown = new Set<string>();
  const runs = cablesInOrder(plant).flatMap((cable) => cableRuns(plant, cable.id, shown));
  return [...runs, ...bareRuns(plant, shown)];
}

/** Ids of the poles that steps come by, each once, as they come. */
export function polesAlong(steps: readonly Step[]): readonly string[] {
  return [...new Set(steps.flatMap((step) => [step.fromPoleId, step.toPoleId]))];
}

function cableRuns(plant: Plant, cableId: string, shown: Set<string>): readonly SpanRun[] {
  const runs: { cableId: string; startM: number; steps: Step[] }[] = [];
  let open = false;
  for (const step of cablePath(plant, cableId).steps) {
    if (shown.has(step.spanId)) {
      open = false;
      continue;
    }
    shown.add(step.spanId);
    const last = runs.at(-1);
    const follows = open && last?.steps.at(-1)?.toPoleId === step.inPoleId;
    const taken = { spanId: step.spanId, fromPoleId: step.inPoleId, toPoleId: step.outPoleId, lengthM: step.lengthM };
    if (last && follows) last.steps.push(taken);
    else runs.push({ cableId, startM: step.startM, steps: [taken] });
    open = true;
  }
  return runs;
}

function bareRuns(plant: Plant, shown: Set<string>): readonly SpanRun[] {
  const runs: SpanRun[] = [];
  const freeAt = (poleId: string) => spansAtPole(plant, poleId).filter((id) => !shown.has(id));
  const poles = [...plant.route().pole.values()].sort(
    (a, b) => byText(a.line, b.line) || a.order - b.order || byText(a.tag, b.tag) || byText(a.id, b.id),
  );
  const walk = (start: string) => {
    const steps: Step[] = [];
    let poleId = start;
    for (let spanId = freeAt(poleId)[0]; spanId !== undefined; spanId = freeAt(poleId)[0]) {
      shown.add(spanId);
      const next = farPoleId(plant, spanId, poleId);
      steps.push({ spanId, fromPoleId: poleId, toPoleId: next, lengthM: plant.rowOf("span", spanId).lengthM });
      poleId = next;
    }
    if (steps.length > 0) runs.push({ cableId: null, startM: 0, steps });
  };
  for (const pole of poles) if (freeAt(pole.id).length % 2 === 1) walk(pole.id);
  for (const pole of poles) while (freeAt(pole.id).length > 0) walk(pole.id);
  return runs;
}
