import { portCounts } from "../plant/terminalView.ts";
import { companySetting, type Rule } from "./rule.ts";

export const sparePorts: Rule = {
  id: "spare-ports",
  title: "A terminal keeps spare ports",
  compares: "The ports of a terminal that have no drop and are not reserved, against the spare ports of the settings.",
  severity: "warning",
  basis: companySetting("sparePortCount"),
  each: "terminal",
  *check(plant, id) {
    const { spare, used, reserved } = portCounts(plant, id);
    const limit = plant.settings().sparePortCount;
    if (spare >= limit) return;
    const larger = plant
      .all("terminalModel")
      .map((one) => plant.rowOf("terminalModel", one))
      .filter((one) => one.portCount >= used + reserved + limit)
      .sort((a, b) => a.portCount - b.portCount)[0];
    yield {
      subjects: [{ table: "terminal", id }],
      message: `Terminal ${plant.rowOf("terminal", id).name} keeps too few spare ports.`,
      measured: spare,
      limit,
      unit: "",
      fixes: larger
        ? [
            {
              label: `Take the one with ${larger.portCount} ports`,
              command: "terminal.resize",
              input: { terminalId: id, terminalModelId: larger.id },
            },
          ]
        : [],
    };
  },
};
