import { freshIds } from "../model/freshId.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { CableRun, CableType } from "../model/tables.ts";
import { cablePath } from "../plant/cablePath.ts";
import { freeId } from "../plant/freeId.ts";
import type { Plant } from "../plant/plant.ts";
import type { Line } from "./lineTree.ts";

type Wishes = {
  /** Type of the cable a new one of that id is of. */
  readonly typeOf: (cableId: string) => CableType;
  /** The cable the lines leave and the pole they leave it at; null where they start at the hub. */
  readonly met: { readonly cableId: string; readonly poleId: string } | null;
};

/** A cable, and the steps of it that others may leave. */
type Laid = { readonly id: string } & Pick<Line, "steps">;

/**
 * Cables parents first, each with its way; a closure comes before the laterals spliced at it. Where the cable the lines leave ends at
 * their pole, it goes on along the first of them.
 */
export function cableRows(plant: Plant, lines: readonly Line[], { typeOf, met }: Wishes): RowChange[] {
  const newCableId = freshIds(plant.route(), "cable");
  const newClosureId = freshIds(plant.route(), "closure");
  const main = met && { id: met.cableId, steps: stepsOf(plant, met.cableId) };
  const laid: Laid[] = [];
  const closureIds = new Map<string, string>();
  const rows: RowChange[] = [];
  for (const line of lines) {
    if (main && laid.length === 0 && main.steps.at(-1)?.toPoleId === met?.poleId) {
      rows.push(...runRows(plant, main.id, line, main.steps.length));
      laid.push({ id: main.id, steps: line.steps });
      continue;
    }
    const id = newCableId();
    const type = typeOf(id);
    const parent = line.parent === null ? main : laid[line.parent];
    const junctionId = line.steps[0]?.fromPoleId ?? "";
    let fromClosureId: string | null = null;
    if (parent) {
      const key = `${parent.id} ${junctionId}`;
      fromClosureId = closureIds.get(key) ?? newClosureId();
      if (!closureIds.has(key)) rows.push(closureRow(plant, fromClosureId, parent, junctionId));
      closureIds.set(key, fromClosureId);
    }
    const name = freeName(plant, line.name);
    const after = { id, name, cableTypeId: type.id, fromClosureId, reelLengthM: type.reelLengthM };
    rows.push({ table: "cable", id, before: null, after }, ...runRows(plant, id, line));
    laid.push({ id, steps: line.steps });
  }
  return rows;
}

function stepsOf(plant: Plant, cableId: string): Line["steps"] {
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

/** A line's spans as the way of a cable, after so many it follows already. */
function runRows(plant: Plant, cableId: string, line: Line, formerCount = 0): RowChange[] {
  return line.steps.map((step, index) => {
    const reversed = plant.rowOf("span", step.spanId).fromPoleId !== step.fromPoleId;
    const after: CableRun = {
      id: freeId(plant, "cableRun", `${cableId}-run-${formerCount + index + 1}`),
      cableId,
      spanId: step.spanId,
      sequence: formerCount + index + 1,
      reversed,
    };
    return { table: "cableRun", id: after.id, before: null, after };
  });
}

/** On the hub's side of the junction, twice the standoff from the pole: beyond where a terminal would hang. */
function closureRow(plant: Plant, id: string, parent: Laid, junctionId: string): RowChange {
  const arriving = parent.steps.find((step) => step.toPoleId === junctionId);
  const step = arriving ?? parent.steps[0];
  const span = plant.rowOf("span", step?.spanId ?? "");
  const fromPoleM = Math.min(2 * plant.settings().standoffM, span.lengthM / 2);
  const offsetM = span.fromPoleId === junctionId ? fromPoleM : span.lengthM - fromPoleM;
  const name = `C-${id.slice("closure-".length)}`;
  const note = `laterals at pole ${plant.rowOf("pole", junctionId).tag}`;
  return {
    table: "closure",
    id,
    before: null,
    after: { id, name, cableId: parent.id, spanId: span.id, offsetM, note },
  };
}
