import { feedWithRoom } from "./giveFiberFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const feedMissing: Rule = {
  id: "feed-missing",
  title: "Every fiber in use from the hub has a hub output",
  compares: "Each fiber in use of a cable that comes from the hub, against the hub outputs: one must light it.",
  severity: "error",
  basis: routeItself,
  each: "fiberUse",
  *check(plant, id) {
    const { cableId, fiber, purpose, feedId: given, terminalId, splitterId } = plant.rowOf("fiberUse", id);
    const cable = plant.rowOf("cable", cableId);
    const needsLight = purpose === "terminal" || purpose === "lateral";
    if (!needsLight || given !== null || cable.fromClosureId !== null) return;
    const feedId = feedWithRoom(plant, cableId);
    const mends = feedId !== null && terminalId !== null && splitterId !== null;
    yield {
      subjects: [
        { table: "fiberUse", id },
        { table: "cable", id: cableId },
      ],
      message: `No hub output lights fiber ${fiber} of cable ${cable.name}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: mends
        ? [
            {
              label: `Light it from ${plant.rowOf("feed", feedId).name}`,
              command: "fiber.give",
              input: { fiberUseId: id, cableId, fiber, terminalId, splitterId, feedId },
            },
          ]
        : [],
    };
  },
};
