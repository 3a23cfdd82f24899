import { z } from "zod";
import { chooseHangingPoint } from "../../layout/chooseHangingPoint.ts";
import { terminalParts } from "../../layout/terminalRows.ts";
import { id, label } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Route } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { poleTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id, spanId: id, poleId: id, terminalModelId: id, name: label.optional() });

/**
 * Hangs a terminal at the standard distance on a side of a pole, with its splitters and its coil; on another side or the next
 * pole, with the reason, where that side is taken.
 */
export const terminalHang: Command<z.infer<typeof input>> = {
  id: "terminal.hang",
  input,
  label: ({ terminalId, poleId, name }, route) =>
    `Hang terminal ${name ?? nextName(route, terminalId)} at pole ${poleTag(route, poleId)}`,
  run(route, { terminalId, spanId, poleId, terminalModelId, name }) {
    if (route.terminal.has(terminalId))
      return fail("taken-id", "There is already a terminal with this id.", terminalId, "Give the new one another id.");
    const span = route.span.get(spanId);
    if (!span) return missing("span", spanId);
    if (!route.pole.has(poleId)) return missing("pole", poleId);
    if (span.fromPoleId !== poleId && span.toPoleId !== poleId)
      return fail(
        "off-span",
        `The span does not end at pole ${poleTag(route, poleId)}.`,
        spanId,
        "Choose a span of that pole.",
      );
    const model = route.terminalModel.get(terminalModelId);
    if (!model) return missing("terminal model", terminalModelId);
    const plant = openPlant(route);
    const chosen = chooseHangingPoint(plant, { spanId, poleId }, model.lengthM, () => true);
    if (!chosen.ok) return chosen;
    const { cableId, offsetM, reason } = chosen.value;
    const terminal = {
      id: terminalId,
      name: name ?? nextName(route, terminalId),
      terminalModelId,
      cableId,
      spanId: chosen.value.spanId,
      offsetM,
      pinned: false,
      reason,
      reservedPortCount: 0,
      reservedFor: "",
    };
    const { splitters, coil } = terminalParts(plant, terminal);
    const rows: RowChange[] = [{ table: "terminal", id: terminalId, before: null, after: terminal }];
    for (const after of splitters) rows.push({ table: "splitter", id: after.id, before: null, after });
    if (coil) rows.push({ table: "slack", id: coil.id, before: null, after: coil });
    return ok(rows);
  },
};

/** The id's own number where it is free, else the first free one. */
function nextName(route: Route, terminalId: string): string {
  const names = new Set([...route.terminal.values()].map((one) => one.name));
  const own = /^terminal-(\d+)$/.exec(terminalId)?.[1];
  if (own !== undefined && !names.has(`T-${own}`)) return `T-${own}`;
  let number = route.terminal.size + 1;
  while (names.has(`T-${number}`)) number += 1;
  return `T-${number}`;
}
