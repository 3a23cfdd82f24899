import { type Rule, routeItself } from "./rule.ts";

export const splitterFedTwice: Rule = {
  id: "splitter-fed-twice",
  title: "A splitter has one fiber",
  compares: "How many fibers feed one splitter, against one.",
  severity: "error",
  basis: routeItself,
  each: "splitter",
  *check(plant, id) {
    const uses = plant.where("fiberUse", "splitterId", id).map((one) => plant.rowOf("fiberUse", one));
    const feeding = uses.filter((one) => one.purpose === "terminal").sort((a, b) => a.fiber - b.fiber);
    const last = feeding.at(-1);
    if (feeding.length < 2 || !last) return;
    const { terminalId, position } = plant.rowOf("splitter", id);
    const fibers = feeding.map((one) => one.fiber).join(", ");
    yield {
      subjects: [
        { table: "splitter", id },
        { table: "terminal", id: terminalId },
      ],
      message: `Splitter ${position} of terminal ${plant.rowOf("terminal", terminalId).name} is given more than one fiber: ${fibers}.`,
      measured: feeding.length,
      limit: 1,
      unit: "",
      fixes:
        feeding.length === 2
          ? [{ label: `Free fiber ${last.fiber}`, command: "fiber.free", input: { fiberUseId: last.id } }]
          : [],
    };
  },
};
