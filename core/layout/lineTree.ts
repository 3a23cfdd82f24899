import { fail, ok, type Result } from "../model/result.ts";
import type { Pole } from "../model/tables.ts";
import { farPoleId, lineAngleRad, spansAtPole } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { compareNatural } from "./order.ts";

/** One span of a line, in the direction away from the hub. */
type LineStep = { readonly spanId: string; readonly fromPoleId: string; readonly toPoleId: string };

/** A run of spans that one cable follows: the main line, a lateral, a lateral of a lateral. */
export type Line = {
  readonly name: string;
  readonly steps: readonly LineStep[];
  /** Position of the line it branches off, in the list; null where it starts at the hub. */
  readonly parent: number | null;
};

type Branch = { readonly step: LineStep; readonly beyondM: number; readonly children: Branch[] };

/**
 * The lines of the tree of spans at the hub, parents before children.
 *
 * At a junction a line goes on along poles of its own name, else it ends; where several go on, the one with the most route beyond
 * it does, and the others branch off. Spans that do not hang together with the hub are left out.
 *
 * @param isOn  which spans count; all where it is not given
 * @returns a fault naming the pole where spans close a loop, or where the hub has no span
 */
export function lineTree(
  plant: Plant,
  hubPoleId: string,
  isOn: (spanId: string) => boolean = () => true,
): Result<readonly Line[]> {
  const hub = plant.rowOf("pole", hubPoleId);
  const grown = growTree(plant, hubPoleId, isOn);
  if (!grown.ok) return grown;
  if (grown.value.length === 0)
    return fail("no-span", `No span starts at pole ${hub.tag}.`, hubPoleId, "Choose a pole with a span as the hub.");
  const lines: { name: string; steps: LineStep[]; parent: number | null }[] = [];
  const starts: { branch: Branch; parent: number | null }[] = grown.value.map((branch) => ({ branch, parent: null }));
  for (const { branch, parent } of starts) {
    const number = lines.length;
    const name = plant.rowOf("pole", branch.step.toPoleId).line;
    const steps: LineStep[] = [];
    for (let at: Branch | undefined = branch; at; ) {
      steps.push(at.step);
      const next: Branch | undefined = goesOn(plant, at, name);
      for (const child of at.children) if (child !== next) starts.push({ branch: child, parent: number });
      at = next;
    }
    lines.push({ name, steps, parent });
  }
  return ok(withNames(lines));
}

/** The pole a main line starts at when nobody named one: the first by order on the line of most poles with a span. */
export function defaultHubPoleId(plant: Plant): string | null {
  const byLine = new Map<string, Pole[]>();
  for (const pole of plant.route().pole.values()) {
    if (spansAtPole(plant, pole.id).length === 0) continue;
    byLine.set(pole.line, [...(byLine.get(pole.line) ?? []), pole]);
  }
  const longest = [...byLine].sort(([a, few], [b, many]) => many.length - few.length || compareNatural(a, b))[0]?.[1];
  const isEnd = (pole: Pole) => (spansAtPole(plant, pole.id).length === 1 ? 0 : 1);
  const first = longest?.sort((a, b) => a.order - b.order || isEnd(a) - isEnd(b) || compareNatural(a.tag, b.tag))[0];
  return first?.id ?? null;
}

function growTree(plant: Plant, hubPoleId: string, isOn: (spanId: string) => boolean): Result<Branch[]> {
  const seen = new Set([hubPoleId]);
  const roots: Branch[] = [];
  const waiting: { poleId: string; cameBy: string; into: Branch[] }[] = [
    { poleId: hubPoleId, cameBy: "", into: roots },
  ];
  const grown: { branch: Branch; into: Branch[] }[] = [];
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    for (const spanId of spansAtPole(plant, next.poleId).filter(isOn)) {
      if (spanId === next.cameBy) continue;
      const toPoleId = farPoleId(plant, spanId, next.poleId);
      if (seen.has(toPoleId)) return loop(plant, toPoleId);
      seen.add(toPoleId);
      const branch = { step: { spanId, fromPoleId: next.poleId, toPoleId }, beyondM: 0, children: [] };
      grown.push({ branch, into: next.into });
      waiting.push({ poleId: toPoleId, cameBy: spanId, into: branch.children });
    }
  }
  for (const { branch, into } of grown.reverse()) {
    const { lengthM } = plant.rowOf("span", branch.step.spanId);
    const furthestM = branch.children.reduce((most, child) => Math.max(most, child.beyondM), 0);
    into.unshift({ ...branch, beyondM: lengthM + furthestM });
  }
  return ok(roots);
}

function goesOn(plant: Plant, at: Branch, name: string): Branch | undefined {
  const turnRad = (child: Branch) => lineAngleRad(plant, at.step.toPoleId, at.step.spanId, child.step.spanId);
  return at.children
    .filter((child) => plant.rowOf("pole", child.step.toPoleId).line === name)
    .sort(
      (a, b) => b.beyondM - a.beyondM || turnRad(a) - turnRad(b) || compareNatural(a.step.spanId, b.step.spanId),
    )[0];
}

/** Names as imported; a line without one is numbered, and a name used twice gets a number behind it. */
function withNames(lines: readonly Line[]): Line[] {
  const used = new Map<string, number>();
  return lines.map((line, index) => {
    const wanted = line.name || `Line ${index + 1}`;
    const count = (used.get(wanted) ?? 0) + 1;
    used.set(wanted, count);
    return { ...line, name: count === 1 ? wanted : `${wanted} ${count}` };
  });
}

function loop(plant: Plant, poleId: string): Result<Branch[]> {
  return fail(
    "loop",
    `The spans close a loop at pole ${plant.rowOf("pole", poleId).tag}; a cable tree needs one way to every pole.`,
    poleId,
    "Take away one span of the loop, or string the line by hand.",
  );
}
