import { z } from "zod";
import { inWriteOrder } from "../../layout/rowSet.ts";
import { id, label, positive } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Pole, Span } from "../../model/tables.ts";
import { cablesInSpan } from "../../plant/cablePath.ts";
import { freeId } from "../../plant/freeId.ts";
import { pointOnSpan } from "../../plant/geometry.ts";
import { hungInSpan } from "../../plant/hanging.ts";
import { openPlant, type Plant } from "../../plant/plant.ts";
import { rerunRows, runsOf } from "../cableRuns.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { forgottenSags, rowEdit } from "../tableRow.ts";
import { spanTag } from "../tags.ts";

const input = z.strictObject({
  spanId: id,
  /** The new pole. */
  poleId: id,
  tag: label,
  /** From the span's first pole, m. */
  offsetM: positive,
  /** The new span, from the new pole to the far one. */
  nextSpanId: id,
});

type Split = z.infer<typeof input>;

/** Sets a pole into a span: what hangs in it, crosses under it and runs along it stays where it is, in the half it falls into. */
export const spanSplit: Command<Split> = {
  id: "span.split",
  input,
  label: ({ spanId, tag }, route) => `Split span ${spanTag(route, spanId)} at new pole ${tag}`,
  run(route, split) {
    const span = route.span.get(split.spanId);
    if (!span) return missing("span", split.spanId);
    for (const [table, taken] of [
      ["pole", split.poleId],
      ["span", split.nextSpanId],
    ] as const)
      if (route[table].has(taken))
        return fail("taken-id", `There is already a ${table} with this id.`, taken, "Give the new one another id.");
    if (split.offsetM >= span.lengthM)
      return fail("off-span", "That point is past the far pole.", span.id, "Choose a point between the two poles.");
    const plant = openPlant(route);
    const inTheWay = hungInSpan(plant, span.id).find(
      (one) => Math.abs(one.offsetM - split.offsetM) <= one.halfM && one.table === "terminal",
    );
    if (inTheWay)
      return fail(
        "place-taken",
        `${inTheWay.name.replace(/^t/, "T")} hangs where the pole would stand.`,
        inTheWay.id,
        "Choose another point of the span, or move the terminal first.",
      );
    return ok(
      inWriteOrder([
        ...poleRows(plant, span, split),
        ...spanRows(span, split),
        ...hungRows(plant, span, split),
        ...forgottenSags(plant, [span.id]),
        ...cablesInSpan(plant, span.id).flatMap((cableId) => runRows(plant, cableId, split)),
      ]),
    );
  },
};

/** The new pole, with our strand at the usual height where the span has one; its ground and its other parties nobody knows yet. */
function poleRows(plant: Plant, span: Span, { poleId, tag, offsetM }: Split): RowChange[] {
  const first = plant.rowOf("pole", span.fromPoleId);
  const pole: Pole = {
    id: poleId,
    tag,
    ...pointOnSpan(plant, span.id, offsetM),
    groundM: null,
    aboveGroundM: null,
    poleClass: "",
    owner: first.owner,
    line: first.line,
    order: 0,
    terminalAllowed: true,
    note: "",
  };
  const rows = [rowEdit("pole", null, pole)];
  if (span.strandSectionId === null) return rows;
  const { company, strandHeightM } = plant.settings();
  const common = { voltageV: 0, note: "", bonded: false };
  const strand = { poleId, owner: company, kind: "ourStrand" as const, heightM: strandHeightM, ...common };
  return [...rows, rowEdit("attachment", null, { id: freeId(plant, "attachment", `${poleId}-strand`), ...strand })];
}

function spanRows(span: Span, { poleId, nextSpanId, offsetM }: Split): RowChange[] {
  return [
    rowEdit("span", span, { ...span, toPoleId: poleId, lengthM: offsetM }),
    rowEdit("span", null, { ...span, id: nextSpanId, fromPoleId: poleId, lengthM: span.lengthM - offsetM }),
  ];
}

function hungRows(plant: Plant, span: Span, { nextSpanId, offsetM }: Split): RowChange[] {
  return (["terminal", "slack", "closure", "crossing", "groundPoint", "structure"] as const).flatMap((table) =>
    plant.where(table, "spanId", span.id).flatMap((one) => {
      const before = plant.rowOf(table, one);
      if (before.offsetM <= offsetM) return [];
      return [rowEdit(table, before, { ...before, spanId: nextSpanId, offsetM: before.offsetM - offsetM })];
    }),
  );
}

function runRows(plant: Plant, cableId: string, { spanId, nextSpanId }: Split): RowChange[] {
  const steps = runsOf(plant, cableId).flatMap((run) => {
    if (run.spanId !== spanId) return [run];
    const next = { ...run, id: freeId(plant, "cableRun", `${run.id}-next`), spanId: nextSpanId };
    return run.reversed ? [next, run] : [run, next];
  });
  return rerunRows(plant, cableId, steps);
}
