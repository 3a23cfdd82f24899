import { rivalUses } from "../plant/fiberTrace.ts";
import { takingsBefore, throughLossDb } from "../plant/taps.ts";
import { otherFiberFix } from "./giveFiberFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const fiberCutUpstream: Rule = {
  id: "fiber-cut-upstream",
  title: "No terminal is fed from a fiber that is cut before it",
  compares:
    "The place where a terminal takes its fiber, against the places nearer the hub where the same fiber is cut and no tap sends light on.",
  severity: "error",
  basis: routeItself,
  each: "fiberUse",
  *check(plant, id) {
    const use = plant.rowOf("fiberUse", id);
    if (use.terminalId === null) return;
    const cut = takingsBefore(plant, use, rivalUses(plant, use)).find((one) => throughLossDb(plant, one) === null);
    if (!cut) return;
    const terminal = plant.rowOf("terminal", use.terminalId);
    const where =
      cut.terminalId === null
        ? `at closure ${cut.closureId === null ? "" : plant.rowOf("closure", cut.closureId).name}`
        : `at terminal ${plant.rowOf("terminal", cut.terminalId).name}`;
    yield {
      subjects: [
        { table: "fiberUse", id },
        { table: "fiberUse", id: cut.id },
        { table: "terminal", id: terminal.id },
      ],
      message: `Terminal ${terminal.name} gets no light: fiber ${use.fiber} of cable ${plant.rowOf("cable", use.cableId).name} is cut ${where} before it.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: otherFiberFix(plant, use),
    };
  },
};
