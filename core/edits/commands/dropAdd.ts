import { z } from "zod";
import { id, ordinal } from "../../model/fields.ts";
import { fail } from "../../model/result.ts";
import { settingsOf } from "../../model/route.ts";
import { dropsOfUnit } from "../../plant/dropView.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalWithPort } from "../portFree.ts";
import { addRow } from "../tableRow.ts";
import { dropTag, terminalTag, unitTag } from "../tags.ts";

const input = z.strictObject({ dropId: id, terminalId: id, port: ordinal, livingUnitId: id });

export const dropAdd: Command<z.infer<typeof input>> = {
  id: "drop.add",
  input,
  label: ({ terminalId, port, livingUnitId }, route) =>
    `Serve ${unitTag(route, livingUnitId)} from terminal ${terminalTag(route, terminalId)} port ${port}`,
  run(route, { dropId, terminalId, port, livingUnitId }) {
    if (!route.livingUnit.has(livingUnitId)) return missing("living unit", livingUnitId);
    const [present] = dropsOfUnit(openPlant(route), livingUnitId);
    if (present !== undefined)
      return fail(
        "served",
        `${unitTag(route, livingUnitId)} is served already, from ${dropTag(route, present)}.`,
        livingUnitId,
        "Move that drop instead, or remove it first.",
      );
    const terminal = terminalWithPort(route, terminalId, port, dropId);
    if (!terminal.ok) return terminal;
    const { dropTypeId } = settingsOf(route);
    return addRow(route, "drop", { id: dropId, terminalId, port, livingUnitId, dropTypeId, pinned: false }, "drop");
  },
};
