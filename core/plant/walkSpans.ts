import type { Pole } from "../model/tables.ts";
import { farPoleId, spanEnds, spansAtPole } from "./geometry.ts";
import type { Plant } from "./plant.ts";

/** A span walked in one direction. */
export type WalkedSpan = {
  readonly spanId: string;
  readonly fromPoleId: string;
  readonly toPoleId: string;
  readonly lengthM: number;
};

/** Spans walked from their ends, by the order of their poles, each once: those that join follow each other. */
export function walkSpans(plant: Plant, spanIds: readonly string[]): readonly (readonly WalkedSpan[])[] {
  const left = new Set(spanIds);
  const ends = spanIds.flatMap((id) => Object.values(spanEnds(plant, id)));
  const poles = [...new Map(ends.map((pole) => [pole.id, pole])).values()].sort(byOrder);
  const leftAt = (poleId: string) => spansAtPole(plant, poleId).filter((id) => left.has(id));
  const walk = (start: string): readonly WalkedSpan[] => {
    const steps: WalkedSpan[] = [];
    let poleId = start;
    for (let [spanId] = leftAt(poleId); spanId !== undefined; [spanId] = leftAt(poleId)) {
      left.delete(spanId);
      const next = farPoleId(plant, spanId, poleId);
      steps.push({ spanId, fromPoleId: poleId, toPoleId: next, lengthM: plant.rowOf("span", spanId).lengthM });
      poleId = next;
    }
    return steps;
  };
  const runs: (readonly WalkedSpan[])[] = [];
  for (const { id } of poles) if (leftAt(id).length % 2 === 1) runs.push(walk(id));
  for (const { id } of poles) while (leftAt(id).length > 0) runs.push(walk(id));
  return runs;
}

function byOrder(a: Pole, b: Pole): number {
  return byCode(a.line, b.line) || a.order - b.order || byCode(a.tag, b.tag) || byCode(a.id, b.id);
}

/** Order by character code: the same on every machine. */
function byCode(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
