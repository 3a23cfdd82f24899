import { dropRunM } from "../plant/dropView.ts";
import { type Rule, routeItself } from "./rule.ts";

export const unitWithTwoDrops: Rule = {
  id: "unit-with-two-drops",
  title: "A living unit has one drop",
  compares: "How many drops a living unit has, against one.",
  severity: "error",
  basis: routeItself,
  each: "livingUnit",
  *check(plant, id) {
    const drops = plant
      .where("drop", "livingUnitId", id)
      .map((one) => plant.rowOf("drop", one))
      .sort((a, b) => dropRunM(plant, a.id) - dropRunM(plant, b.id));
    const longest = drops.at(-1);
    if (drops.length < 2 || !longest) return;
    const from = drops.map((one) => `terminal ${plant.rowOf("terminal", one.terminalId).name} port ${one.port}`);
    yield {
      subjects: [{ table: "livingUnit", id }, ...drops.map((one) => ({ table: "drop" as const, id: one.id }))],
      message: `${plant.rowOf("livingUnit", id).address} is given more than one drop: ${from.join(", ")}.`,
      measured: drops.length,
      limit: 1,
      unit: "",
      fixes: [{ label: "Take the longest drop away", command: "drop.remove", input: { dropId: longest.id } }],
    };
  },
};
