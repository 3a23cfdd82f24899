import type { RowChange } from "../model/rowChange.ts";
import type { Attachment, CableRun } from "../model/tables.ts";
import { freeId } from "../plant/freeId.ts";
import type { Plant } from "../plant/plant.ts";
import type { Line } from "./lineTree.ts";

/** Strand from dead end to dead end along each line, and our attachment on each pole that has none. */
export function strandRows(plant: Plant, lines: readonly Line[], strandTypeId: string): RowChange[] {
  const { stringingSagFrac, stringingDegC, strandHeightM, company } = plant.settings();
  const sections: RowChange[] = [];
  const spans: RowChange[] = [];
  const poleIds = new Set<string>();
  let number = 0;
  for (const line of lines) {
    do number += 1;
    while (plant.row("strandSection", `section-${number}`));
    const id = `section-${number}`;
    const after = { id, name: line.name, strandTypeId, stringingSagFrac, stringingDegC };
    sections.push({ table: "strandSection", id, before: null, after });
    for (const step of line.steps) {
      const before = plant.rowOf("span", step.spanId);
      const strandSectionId = before.strandSectionId ?? id;
      if (before.strandSectionId === null)
        spans.push({ table: "span", id: before.id, before, after: { ...before, strandSectionId } });
      poleIds.add(step.fromPoleId).add(step.toPoleId);
    }
  }
  const used = new Set(spans.map((row) => row.table === "span" && row.after?.strandSectionId));
  const attachments = [...poleIds]
    .filter((poleId) => !hasOurStrand(plant, poleId))
    .map((poleId): RowChange => {
      const id = `${poleId}-strand`;
      const after: Attachment = {
        id,
        poleId,
        owner: company,
        kind: "ourStrand",
        heightM: strandHeightM,
        voltageV: 0,
        note: "",
      };
      return { table: "attachment", id, before: null, after };
    });
  return [...sections.filter((row) => used.has(row.id)), ...attachments, ...spans];
}

function hasOurStrand(plant: Plant, poleId: string): boolean {
  return plant.where("attachment", "poleId", poleId).some((id) => plant.rowOf("attachment", id).kind === "ourStrand");
}

/** A line's spans as the way of a cable, after so many it follows already. */
export function runRows(plant: Plant, cableId: string, line: Line, formerCount = 0): RowChange[] {
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
export function closureRow(
  plant: Plant,
  id: string,
  cableId: string,
  parent: Pick<Line, "steps">,
  junctionId: string,
): RowChange {
  const arriving = parent.steps.find((step) => step.toPoleId === junctionId);
  const step = arriving ?? parent.steps[0];
  const span = plant.rowOf("span", step?.spanId ?? "");
  const fromPoleM = Math.min(2 * plant.settings().standoffM, span.lengthM / 2);
  const offsetM = span.fromPoleId === junctionId ? fromPoleM : span.lengthM - fromPoleM;
  const name = `C-${id.slice("closure-".length)}`;
  const note = `laterals at pole ${plant.rowOf("pole", junctionId).tag}`;
  return { table: "closure", id, before: null, after: { id, name, cableId, spanId: span.id, offsetM, note } };
}
