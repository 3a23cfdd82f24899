import { cablesInOrder } from "./cableOrder.ts";
import { cablePath } from "./cablePath.ts";
import type { Plant } from "./plant.ts";
import { type WalkedSpan, walkSpans } from "./walkSpans.ts";

/** A span as sheets come by it. */
export type Step = WalkedSpan;

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

function bareRuns(plant: Plant, shown: ReadonlySet<string>): readonly SpanRun[] {
  const bare = plant.all("span").filter((id) => !shown.has(id));
  return walkSpans(plant, bare).map((steps) => ({ cableId: null, startM: 0, steps }));
}
