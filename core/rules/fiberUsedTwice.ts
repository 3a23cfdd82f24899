import { rivalUses } from "../plant/fiberTrace.ts";
import { isTapChain } from "../plant/taps.ts";
import { otherFiberFix } from "./giveFiberFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const fiberUsedTwice: Rule = {
  id: "fiber-used-twice",
  title: "Every fiber is used once",
  compares: "How many uses one fiber of a cable has, dead ones and taps one behind the other aside, against one.",
  severity: "error",
  basis: routeItself,
  each: "fiberUse",
  *check(plant, id) {
    const use = plant.rowOf("fiberUse", id);
    const rivals = rivalUses(plant, use).filter((one) => one.purpose !== "dead");
    if (use.purpose === "dead" || rivals.length === 0 || rivals.some((one) => one.id < id)) return;
    if (isTapChain(plant, [use, ...rivals])) return;
    const places = [use, ...rivals].map((one) =>
      one.terminalId === null ? one.purpose : `terminal ${plant.rowOf("terminal", one.terminalId).name}`,
    );
    yield {
      subjects: [use, ...rivals].map((one) => ({ table: "fiberUse", id: one.id })),
      message: `Fiber ${use.fiber} of cable ${plant.rowOf("cable", use.cableId).name} is used more than once: ${places.join(", ")}.`,
      measured: rivals.length + 1,
      limit: 1,
      unit: "",
      fixes: [...rivals]
        .reverse()
        .concat(use)
        .flatMap((one) => otherFiberFix(plant, one))
        .slice(0, 1),
    };
  },
};
