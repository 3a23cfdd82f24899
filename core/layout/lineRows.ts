import type { RowChange } from "../model/rowChange.ts";
import type { Attachment } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import type { Line } from "./lineTree.ts";

/** Strand from dead end to dead end along each line, and our attachment on each pole that has none. */
export function strandRows(plant: Plant, lines: readonly Line[], strandTypeId: string): RowChange[] {
  const { stringingSagFrac, stringingDegC, strandAtPoles: atPoles, strandHeightM, company } = plant.settings();
  const sections: RowChange[] = [];
  const spans: RowChange[] = [];
  const poleIds = new Set<string>();
  let number = 0;
  for (const line of lines) {
    do number += 1;
    while (plant.row("strandSection", `section-${number}`));
    const id = `section-${number}`;
    const after = { id, name: line.name, strandTypeId, stringingSagFrac, stringingDegC, atPoles };
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
        bonded: false,
      };
      return { table: "attachment", id, before: null, after };
    });
  return [...sections.filter((row) => used.has(row.id)), ...attachments, ...spans];
}

function hasOurStrand(plant: Plant, poleId: string): boolean {
  return plant.where("attachment", "poleId", poleId).some((id) => plant.rowOf("attachment", id).kind === "ourStrand");
}
