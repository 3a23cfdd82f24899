import { z } from "zod";
import { id, ordinal } from "../../model/fields.ts";
import { fail, ok, type Result } from "../../model/result.ts";
import type { Route } from "../../model/route.ts";
import type { FiberUse } from "../../model/tables.ts";
import { openPlant } from "../../plant/plant.ts";
import { isTapChain } from "../../plant/taps.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { cableTag, terminalTag } from "../tags.ts";

const input = z.strictObject({
  fiberUseId: id,
  cableId: id,
  fiber: ordinal,
  terminalId: id,
  splitterId: id,
  /** Hub output that lights it; null on a cable spliced on another. */
  feedId: id.nullable(),
});
type Input = z.infer<typeof input>;

/** Gives a fiber to a splitter; a use with this id that is there already moves to the new fiber and splitter. */
export const fiberGive: Command<Input> = {
  id: "fiber.give",
  input,
  label: ({ cableId, fiber, terminalId }, route) =>
    `Give fiber ${fiber} of cable ${cableTag(route, cableId)} to terminal ${terminalTag(route, terminalId)}`,
  run(route, given) {
    const allowed = mayGive(route, given);
    if (!allowed.ok) return allowed;
    const { fiberUseId, ...what } = given;
    const none = { closureId: null, lateralCableId: null, lateralFiber: null };
    const after: FiberUse = { id: fiberUseId, purpose: "terminal", ...what, ...none };
    return ok([{ table: "fiberUse", id: fiberUseId, before: route.fiberUse.get(fiberUseId) ?? null, after }]);
  },
};

function mayGive(route: Route, given: Input): Result<null> {
  const cable = route.cable.get(given.cableId);
  if (!cable) return missing("cable", given.cableId);
  const terminal = route.terminal.get(given.terminalId);
  if (!terminal) return missing("terminal", given.terminalId);
  if (route.splitter.get(given.splitterId)?.terminalId !== terminal.id) return missing("splitter", given.splitterId);
  if (given.feedId !== null && !route.feed.has(given.feedId)) return missing("hub output", given.feedId);
  if (terminal.cableId !== cable.id)
    return fail(
      "off-cable",
      `Terminal ${terminal.name} hangs on cable ${cableTag(route, terminal.cableId)}.`,
      cable.id,
      "Give it a fiber of that cable.",
    );
  const { fiberCount } = openPlant(route).rowOf("cableType", cable.cableTypeId);
  if (given.fiber > fiberCount)
    return fail("no-fiber", `Cable ${cable.name} has ${fiberCount} fibers.`, cable.id, "Choose one of its fibers.");
  return isFree(route, given);
}

function isFree(route: Route, given: Input): Result<null> {
  const plant = openPlant(route);
  const others = (ids: readonly string[]) => ids.filter((one) => one !== given.fiberUseId);
  const onCable = others(plant.where("fiberUse", "cableId", given.cableId));
  const holders = onCable.map((one) => plant.rowOf("fiberUse", one)).filter((one) => one.fiber === given.fiber);
  const [holder] = holders;
  const asked = { ...given, purpose: "terminal" as const, closureId: null };
  const goesOn = plant.settings().deadLength !== "left" && isTapChain(plant, [...holders, asked]);
  if (holder && !goesOn) {
    const where =
      holder.terminalId === null ? `held: ${holder.purpose}` : `at terminal ${terminalTag(route, holder.terminalId)}`;
    return fail(
      "fiber-taken",
      `Fiber ${given.fiber} is in use, ${where}.`,
      holder.id,
      "Choose a free fiber or free that one first.",
    );
  }
  const [lit] = others(plant.where("fiberUse", "splitterId", given.splitterId));
  if (lit !== undefined)
    return fail(
      "splitter-lit",
      `The splitter has fiber ${plant.rowOf("fiberUse", lit).fiber} already.`,
      given.splitterId,
      "Free that fiber first.",
    );
  return ok(null);
}
