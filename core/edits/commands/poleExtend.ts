import { z } from "zod";
import { inWriteOrder } from "../../layout/rowSet.ts";
import { figure, id, label, words } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Pole, Span } from "../../model/tables.ts";
import { cablePath, cablesInSpan } from "../../plant/cablePath.ts";
import { freeId } from "../../plant/freeId.ts";
import { planeDistanceM, spansAtPole } from "../../plant/geometry.ts";
import { openPlant, type Plant } from "../../plant/plant.ts";
import { rerunRows, runsOf } from "../cableRuns.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";
import { poleTag } from "../tags.ts";

const input = z.strictObject({
  fromPoleId: id,
  /** The new pole. */
  poleId: id,
  tag: label,
  eastM: figure,
  northM: figure,
  /** Name of the line the new pole stands in; empty for the line of the pole it goes on from. */
  line: words,
  spanId: id,
});

type Extension = z.infer<typeof input>;

/** Sets a pole after another with a span between; past the end of a strung line strand and cable go on into the new span. */
export const poleExtend: Command<Extension> = {
  id: "pole.extend",
  input,
  label: ({ fromPoleId, tag }, route) => `Extend the line from pole ${poleTag(route, fromPoleId)} to ${tag}`,
  run(route, given) {
    const from = route.pole.get(given.fromPoleId);
    if (!from) return missing("pole", given.fromPoleId);
    for (const [table, taken] of [
      ["pole", given.poleId],
      ["span", given.spanId],
    ] as const)
      if (route[table].has(taken))
        return fail("taken-id", `There is already a ${table} with this id.`, taken, "Give the new one another id.");
    const lengthM = planeDistanceM(from, given);
    if (!(lengthM > 0))
      return fail("no-length", "A span needs two poles in two places.", given.spanId, "Choose another place.");
    const plant = openPlant(route);
    const [lastId, ...others] = spansAtPole(plant, from.id);
    const last = lastId === undefined || others.length > 0 ? null : plant.rowOf("span", lastId);
    const goesOn = given.line === "" || given.line === from.line ? last : null;
    return ok(inWriteOrder([...lineRows(plant, from, goesOn, given, lengthM), ...cableRows(plant, goesOn, given)]));
  },
};

function lineRows(plant: Plant, from: Pole, last: Span | null, given: Extension, lengthM: number): RowChange[] {
  const { fromPoleId, poleId, tag, eastM, northM, line, spanId } = given;
  const pole: Pole = {
    id: poleId,
    tag,
    eastM,
    northM,
    groundM: null,
    aboveGroundM: null,
    poleClass: "",
    owner: from.owner,
    line: line || from.line,
    order: 0,
    terminalAllowed: true,
    note: "",
  };
  const strandSectionId = last?.strandSectionId ?? null;
  const span: Span = { id: spanId, fromPoleId, toPoleId: poleId, lengthM, strandSectionId, origin: "drawn", note: "" };
  const rows = [rowEdit("pole", null, pole), rowEdit("span", null, span)];
  if (strandSectionId === null) return rows;
  const { company, strandHeightM } = plant.settings();
  const common = { voltageV: 0, note: "", bonded: false };
  const strand = { poleId, owner: company, kind: "ourStrand" as const, heightM: strandHeightM, ...common };
  return [...rows, rowEdit("attachment", null, { id: freeId(plant, "attachment", `${poleId}-strand`), ...strand })];
}

/** Cables that end at the pole run on; one that begins there is left, since its feed end is there. */
function cableRows(plant: Plant, last: Span | null, { fromPoleId, spanId }: Extension): RowChange[] {
  if (!last) return [];
  return cablesInSpan(plant, last.id)
    .filter((cableId) => cablePath(plant, cableId).steps.at(-1)?.outPoleId === fromPoleId)
    .flatMap((cableId) => {
      const id = freeId(plant, "cableRun", `${cableId}-${spanId}`);
      return rerunRows(plant, cableId, [
        ...runsOf(plant, cableId),
        { id, cableId, spanId, sequence: plant.where("cableRun", "cableId", cableId).length + 1, reversed: false },
      ]);
    });
}
