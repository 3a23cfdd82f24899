import { z } from "zod";
import { inWriteOrder } from "../../layout/rowSet.ts";
import { id } from "../../model/fields.ts";
import { fail, ok, type Result } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Span } from "../../model/tables.ts";
import { cablesInSpan } from "../../plant/cablePath.ts";
import { farPoleId, planeDistanceM, spansAtPole } from "../../plant/geometry.ts";
import { openPlant, type Plant } from "../../plant/plant.ts";
import { rerunRows, runsOf } from "../cableRuns.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { forgottenSags, rowEdit } from "../tableRow.ts";
import { cableTag, poleTag } from "../tags.ts";

const input = z.strictObject({ poleId: id });

/**
 * Takes a pole out of a line and joins its two spans. What hung near one of the outer poles keeps its distance from it, what hung
 * near the pole taken out keeps its place along the line, crossings, ground and structures keep their share of the way.
 */
export const spanJoin: Command<z.infer<typeof input>> = {
  id: "span.join",
  input,
  label: ({ poleId }, route) => `Remove pole ${poleTag(route, poleId)} and join its spans`,
  run(route, { poleId }) {
    const pole = route.pole.get(poleId);
    if (!pole) return missing("pole", poleId);
    const plant = openPlant(route);
    const pair = pairAt(plant, poleId);
    if (!pair.ok) return pair;
    const joined = joinOf(plant, poleId, pair.value);
    const moved = hungRows(plant, joined);
    if (moved === null)
      return fail(
        "no-room",
        "The joined span would be too short for what hangs in it.",
        poleId,
        "Move or take down what hangs beside the pole first.",
      );
    const onPole = (["attachment", "guy"] as const).flatMap((table) =>
      plant.where(table, "poleId", poleId).map((one) => rowEdit(table, plant.rowOf(table, one), null)),
    );
    return ok(
      inWriteOrder([
        rowEdit("span", joined.kept, joined.after),
        ...moved,
        ...cablesInSpan(plant, joined.gone.id).flatMap((cableId) => runRows(plant, cableId, joined.gone.id)),
        ...onPole,
        ...forgottenSags(plant, [joined.kept.id, joined.gone.id]),
        rowEdit("span", joined.gone, null),
        rowEdit("pole", pole, null),
      ]),
    );
  },
};

type Join = {
  readonly kept: Span;
  readonly gone: Span;
  readonly after: Span;
  /** Length of both spans before they were joined, m. */
  readonly bothM: number;
  /** An offset of one of the two as an offset along both. */
  readonly along: (spanId: string, offsetM: number) => number;
};

/** The two spans of a pole in the middle of a line; the one that ends there first. */
function pairAt(plant: Plant, poleId: string): Result<readonly [Span, Span]> {
  const tag = plant.rowOf("pole", poleId).tag;
  const spans = spansAtPole(plant, poleId).map((one) => plant.rowOf("span", one));
  const [a, b] = spans.sort((one, other) => Number(other.toPoleId === poleId) - Number(one.toPoleId === poleId));
  if (!a || !b || spans.length > 2)
    return fail(
      "not-in-line",
      `Pole ${tag} has ${spans.length} ${spans.length === 1 ? "span" : "spans"}; only a pole with two can be taken out of a line.`,
      poleId,
      "Choose a pole in the middle of a line.",
    );
  if (farPoleId(plant, a.id, poleId) === farPoleId(plant, b.id, poleId))
    return fail("loop", `Both spans of pole ${tag} lead to one pole.`, poleId, "Remove one of the two spans first.");
  if (a.strandSectionId !== b.strandSectionId)
    return fail(
      "dead-end",
      `The strand dead-ends at pole ${tag}: its two spans are of different strand sections.`,
      poleId,
      "Choose a pole the strand passes.",
    );
  const ending = [a, b].flatMap((one) => cablesInSpan(plant, one.id)).find((one) => !passes(plant, one, a.id, b.id));
  if (ending !== undefined)
    return fail(
      "cable-ends",
      `Cable ${cableTag(plant.route(), ending)} ends or turns back at pole ${tag}.`,
      poleId,
      "Choose a pole every cable passes.",
    );
  return ok([a, b]);
}

/** Whether a cable runs through both spans one after the other each time it comes by. */
function passes(plant: Plant, cableId: string, a: string, b: string): boolean {
  const spanIds = runsOf(plant, cableId).map((run) => run.spanId);
  const times = (spanId: string) => spanIds.filter((one) => one === spanId).length;
  const isBeside = (i: number, other: string) => spanIds[i - 1] === other || spanIds[i + 1] === other;
  return (
    times(a) === times(b) && spanIds.every((one, i) => (one !== a || isBeside(i, b)) && (one !== b || isBeside(i, a)))
  );
}

function joinOf(plant: Plant, poleId: string, [kept, gone]: readonly [Span, Span]): Join {
  const farId = farPoleId(plant, gone.id, poleId);
  const isKeptFirst = kept.toPoleId === poleId;
  const after = isKeptFirst ? { ...kept, toPoleId: farId } : { ...kept, fromPoleId: farId };
  const bothM = kept.lengthM + gone.lengthM;
  const drawnM = [kept, gone].reduce((sum, one) => sum + chordM(plant, one), 0);
  // recorded lengths may differ from the drawn ones; the joined span keeps their ratio
  const lengthM = drawnM > 0 ? (bothM * chordM(plant, after)) / drawnM : bothM;
  const runsOn = isKeptFirst === (gone.fromPoleId === poleId);
  return {
    kept,
    gone,
    after: { ...after, lengthM },
    bothM,
    along(spanId, offsetM) {
      if (spanId === kept.id) return isKeptFirst ? offsetM : gone.lengthM + offsetM;
      const onGoneM = runsOn ? offsetM : gone.lengthM - offsetM;
      return isKeptFirst ? kept.lengthM + onGoneM : onGoneM;
    },
  };
}

function chordM(plant: Plant, { fromPoleId, toPoleId }: Span): number {
  return planeDistanceM(plant.rowOf("pole", fromPoleId), plant.rowOf("pole", toPoleId));
}

function hungRows(plant: Plant, { kept, gone, after, bothM, along }: Join): RowChange[] | null {
  const rows: RowChange[] = [];
  const spanIds = [kept.id, gone.id];
  for (const table of ["terminal", "slack", "closure"] as const) {
    for (const one of spanIds.flatMap((spanId) => plant.where(table, "spanId", spanId))) {
      const before = plant.rowOf(table, one);
      const alongM = along(before.spanId, before.offsetM);
      const offsetM = alongM <= bothM / 2 ? alongM : after.lengthM - (bothM - alongM);
      if (!(offsetM > 0 && offsetM < after.lengthM)) return null;
      rows.push(rowEdit(table, before, { ...before, spanId: kept.id, offsetM }));
    }
  }
  for (const table of ["crossing", "groundPoint", "structure"] as const) {
    for (const one of spanIds.flatMap((spanId) => plant.where(table, "spanId", spanId))) {
      const before = plant.rowOf(table, one);
      const offsetM = (along(before.spanId, before.offsetM) / bothM) * after.lengthM;
      rows.push(rowEdit(table, before, { ...before, spanId: kept.id, offsetM }));
    }
  }
  return rows;
}

function runRows(plant: Plant, cableId: string, goneId: string): RowChange[] {
  const steps = runsOf(plant, cableId).filter((run) => run.spanId !== goneId);
  return rerunRows(plant, cableId, steps);
}
