import { tubeOf, usesOfTerminal } from "../plant/fiberView.ts";
import { freeId } from "../plant/freeId.ts";
import type { Plant } from "../plant/plant.ts";
import { feedingUseId } from "../plant/portLight.ts";
import { feedWithRoom, freeFiber } from "./giveFiberFix.ts";
import { type Fix, type Rule, routeItself } from "./rule.ts";

export const splitterWithoutFiber: Rule = {
  id: "splitter-without-fiber",
  title: "Every splitter has a fiber",
  compares: "Each splitter, against the fibers in use: one must feed it.",
  severity: "warning",
  basis: routeItself,
  each: "splitter",
  *check(plant, id) {
    if (feedingUseId(plant, id) !== null) return;
    const { terminalId, position } = plant.rowOf("splitter", id);
    yield {
      subjects: [
        { table: "splitter", id },
        { table: "terminal", id: terminalId },
      ],
      message: `No fiber feeds splitter ${position} of terminal ${plant.rowOf("terminal", terminalId).name}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: nextFiberFix(plant, id, terminalId),
    };
  },
};

/**
 * The next fiber of the terminal's tube, lit by a hub output with room; none where a cable from the hub has no such
 * output.
 */
function nextFiberFix(plant: Plant, splitterId: string, terminalId: string): readonly Fix[] {
  const { cableId } = plant.rowOf("terminal", terminalId);
  const given = usesOfTerminal(plant, terminalId)[0];
  const tube = given === undefined ? 1 : tubeOf(plant, cableId, plant.rowOf("fiberUse", given).fiber).tube;
  const fiber = freeFiber(plant, cableId, tube);
  const feedId = feedWithRoom(plant, cableId);
  if (fiber === null || (feedId === null && plant.rowOf("cable", cableId).fromClosureId === null)) return [];
  const fiberUseId = freeId(plant, "fiberUse", `${splitterId}-fiber`);
  return [
    {
      label: `Give it fiber ${fiber}`,
      command: "fiber.give",
      input: { fiberUseId, cableId, fiber, terminalId, splitterId, feedId },
    },
  ];
}
