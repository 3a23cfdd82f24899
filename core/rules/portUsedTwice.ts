import { portsOf } from "../plant/terminalView.ts";
import { otherPortFix } from "./portFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const portUsedTwice: Rule = {
  id: "port-used-twice",
  title: "Every port holds one drop",
  compares: "How many drops are on one port, against one.",
  severity: "error",
  basis: routeItself,
  each: "terminal",
  *check(plant, id) {
    for (const { port, dropIds } of portsOf(plant, id)) {
      if (dropIds.length < 2) continue;
      const drops = dropIds.map((one) => plant.rowOf("drop", one));
      const addresses = drops.map((one) => plant.rowOf("livingUnit", one.livingUnitId).address);
      yield {
        subjects: [{ table: "terminal", id }, ...dropIds.map((one) => ({ table: "drop" as const, id: one }))],
        message: `Port ${port} of terminal ${plant.rowOf("terminal", id).name} is given more than once: ${addresses.join("; ")}.`,
        measured: dropIds.length,
        limit: 1,
        unit: "",
        fixes: drops.slice(-1).flatMap((one) => otherPortFix(plant, one)),
      };
    }
  },
};
