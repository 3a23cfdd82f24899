import { freshIds } from "../model/freshId.ts";
import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { cablePath, cablesInSpan } from "../plant/cablePath.ts";
import { spansAtPole } from "../plant/geometry.ts";
import { spanName } from "../plant/names.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { closureRow, runRows, strandRows } from "./lineRows.ts";
import { type Line, lineTree } from "./lineTree.ts";

/**
 * Strings the bare spans that hang together with one of them: strand and our attachments, and cable from where they leave a line that
 * has one. Where they go on from its last pole, the cable goes on with the longest of them; all others are laterals, spliced on at a
 * closure, of the type of the cable they leave. Which fibers are spliced through is for the layout to say.
 *
 * @returns a fault where the span is strung, where no cable is met, where cables are met at two poles, or where spans close a loop
 */
export function stringBranch(route: Route, spanId: string): Result<RowChange[]> {
  const plant = openPlant(route);
  const bare = bareFrom(plant, spanId);
  if (bare.size === 0)
    return fail(
      "strung",
      "The span carries strand or cable already.",
      spanId,
      "Choose a span the line does not reach.",
    );
  const met = polesOf(plant, bare).filter((poleId) => cableAt(plant, poleId) !== null);
  const [rootId, other] = met;
  if (rootId === undefined)
    return fail(
      "no-cable-met",
      "These spans meet no pole that a cable passes.",
      spanName(plant, spanId),
      "Add the span between them and the line first.",
    );
  if (other !== undefined)
    return fail(
      "loop",
      `These spans meet a cable at pole ${tagOf(plant, rootId)} and at pole ${tagOf(plant, other)}; a cable tree needs one way to every pole.`,
      spanId,
      "Take away one span between the two.",
    );
  const lines = lineTree(plant, rootId, (one) => bare.has(one));
  if (!lines.ok) return lines;
  const strandTypeId = plant.settings().strandTypeId;
  return ok([...strandRows(plant, lines.value, strandTypeId), ...cableRows(plant, lines.value, rootId)]);
}

/** The bare spans that hang together with one; none where it carries anything itself. */
function bareFrom(plant: Plant, spanId: string): ReadonlySet<string> {
  const isBare = (id: string): boolean =>
    plant.rowOf("span", id).strandSectionId === null && cablesInSpan(plant, id).length === 0;
  const found = new Set(isBare(spanId) ? [spanId] : []);
  for (const id of found) {
    const { fromPoleId, toPoleId } = plant.rowOf("span", id);
    // the far side of a line that has a cable is another branch
    const poleIds = [fromPoleId, toPoleId].filter((poleId) => cableAt(plant, poleId) === null);
    for (const near of poleIds.flatMap((poleId) => spansAtPole(plant, poleId))) if (isBare(near)) found.add(near);
  }
  return found;
}

function polesOf(plant: Plant, spanIds: ReadonlySet<string>): readonly string[] {
  return [
    ...new Set(
      [...spanIds].flatMap((id) => {
        const { fromPoleId, toPoleId } = plant.rowOf("span", id);
        return [fromPoleId, toPoleId];
      }),
    ),
  ].sort();
}

/** The first cable that passes a pole; null where none does. */
function cableAt(plant: Plant, poleId: string): string | null {
  return spansAtPole(plant, poleId).flatMap((spanId) => cablesInSpan(plant, spanId))[0] ?? null;
}

function cableRows(plant: Plant, lines: readonly Line[], rootId: string): RowChange[] {
  const mainId = cableAt(plant, rootId) ?? "";
  const main = plant.rowOf("cable", mainId);
  const type = plant.rowOf("cableType", main.cableTypeId);
  const { steps } = cablePath(plant, mainId);
  const newCableId = freshIds(plant.route(), "cable");
  const newClosureId = freshIds(plant.route(), "closure");
  const cableOf = new Map<number, string>();
  const closureOf = new Map<string, string>();
  const rows: RowChange[] = [];
  lines.forEach((line, index) => {
    const goesOn = index === 0 && steps.at(-1)?.outPoleId === rootId;
    const id = goesOn ? mainId : newCableId();
    cableOf.set(index, id);
    if (goesOn) {
      rows.push(...runRows(plant, id, line, steps.length));
      return;
    }
    const junctionId = line.steps[0]?.fromPoleId ?? rootId;
    const parentId = line.parent === null ? mainId : (cableOf.get(line.parent) ?? mainId);
    const key = `${parentId} ${junctionId}`;
    const fromClosureId = closureOf.get(key) ?? newClosureId();
    if (!closureOf.has(key)) {
      const parent = line.parent === null ? { steps: asLine(plant, mainId) } : lines[line.parent];
      if (parent) rows.push(closureRow(plant, fromClosureId, parentId, parent, junctionId));
    }
    closureOf.set(key, fromClosureId);
    const after = {
      id,
      name: freeName(plant, line.name),
      cableTypeId: type.id,
      fromClosureId,
      reelLengthM: type.reelLengthM,
    };
    rows.push({ table: "cable", id, before: null, after }, ...runRows(plant, id, line));
  });
  return rows;
}

function asLine(plant: Plant, cableId: string): Line["steps"] {
  return cablePath(plant, cableId).steps.map(({ spanId, inPoleId, outPoleId }) => ({
    spanId,
    fromPoleId: inPoleId,
    toPoleId: outPoleId,
  }));
}

function freeName(plant: Plant, wanted: string): string {
  const taken = new Set([...plant.route().cable.values()].map((one) => one.name));
  let name = wanted;
  for (let count = 2; taken.has(name); count += 1) name = `${wanted} ${count}`;
  return name;
}

function tagOf(plant: Plant, poleId: string): string {
  return plant.rowOf("pole", poleId).tag;
}
