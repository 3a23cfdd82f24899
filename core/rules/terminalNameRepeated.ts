import { freeTag } from "./freeTag.ts";
import { type Rule, routeItself } from "./rule.ts";

export const terminalNameRepeated: Rule = {
  id: "terminal-name-repeated",
  title: "Every terminal has a name of its own",
  compares: "How many terminals have one and the same name, against one.",
  severity: "error",
  basis: routeItself,
  each: "terminal",
  *check(plant, id) {
    const { name } = plant.rowOf("terminal", id);
    const same = plant.where("terminal", "name", name);
    const last = same.at(-1);
    if (same.length < 2 || same[0] !== id || last === undefined) return;
    const newName = freeTag(name, (text) => plant.where("terminal", "name", text).length > 0);
    yield {
      subjects: same.map((one) => ({ table: "terminal", id: one })),
      message: `More than one terminal has the name ${name}.`,
      measured: same.length,
      limit: 1,
      unit: "",
      fixes: [
        {
          label: `Call the last one ${newName}`,
          command: "terminal.rename",
          input: { terminalId: last, name: newName },
        },
      ],
    };
  },
};
