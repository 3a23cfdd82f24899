import { fiberUseStationM, rivalUses } from "../plant/fiberTrace.ts";
import { otherFiberFix } from "./giveFiberFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const fiberCutUpstream: Rule = {
  id: "fiber-cut-upstream",
  title: "No terminal is fed from a fiber that is cut before it",
  compares:
    "The place where a terminal takes its fiber, against the places nearer the hub where the same fiber is cut.",
  severity: "error",
  basis: routeItself,
  each: "fiberUse",
  *check(plant, id) {
    const use = plant.rowOf("fiberUse", id);
    const here = fiberUseStationM(plant, id);
    if (use.terminalId === null || here === null) return;
    const cut = rivalUses(plant, use).find((one) => {
      const there = one.purpose === "reserved" ? null : fiberUseStationM(plant, one.id);
      return there !== null && there < here;
    });
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
