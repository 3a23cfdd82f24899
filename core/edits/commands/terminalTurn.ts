import { z } from "zod";
import { otherSides, standardOffsetM } from "../../layout/chooseHangingPoint.ts";
import { roomAtPole } from "../../layout/hangingPoints.ts";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { cablesInSpan } from "../../plant/cablePath.ts";
import { openPlant } from "../../plant/plant.ts";
import { terminalPlace } from "../../plant/terminalView.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { movedTerminalRows } from "../moveTerminal.ts";
import { poleTag, terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id });

/** Turns a terminal to the other side of its pole, at the standard distance. */
export const terminalTurn: Command<z.infer<typeof input>> = {
  id: "terminal.turn",
  input,
  label: ({ terminalId }, route) => `Turn terminal ${terminalTag(route, terminalId)} to the other side`,
  run(route, { terminalId }) {
    const before = route.terminal.get(terminalId);
    if (!before) return missing("terminal", terminalId);
    const plant = openPlant(route);
    const { poleId } = terminalPlace(plant, terminalId);
    const { lengthM } = plant.rowOf("terminalModel", before.terminalModelId);
    const tag = poleTag(route, poleId);
    const sides = otherSides(plant, { spanId: before.spanId, poleId }).filter((side) =>
      cablesInSpan(plant, side.spanId).includes(before.cableId),
    );
    if (sides.length === 0)
      return fail(
        "no-side",
        `The cable ends at pole ${tag}: it has no other side.`,
        terminalId,
        "Choose another pole.",
      );
    const rooms = sides.map((side) => ({ side, ...roomAtPole(plant, side.spanId, poleId, (id) => id !== terminalId) }));
    const free = rooms.find((one) => one.roomM >= lengthM);
    if (!free) {
      const reasons = rooms.map((one) => one.reason).join("; ");
      return fail("no-room", `The other side of pole ${tag} is taken: ${reasons}.`, terminalId, "Choose another pole.");
    }
    return ok(movedTerminalRows(plant, before, free.side.spanId, standardOffsetM(plant, free.side)));
  },
};
