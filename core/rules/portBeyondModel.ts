import { otherPortFix } from "./portFix.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const portBeyondModel: Rule = {
  id: "port-beyond-model",
  title: "Ports in use are on the terminal's face",
  compares: "The number of a port in use, against the ports on the terminal's face.",
  severity: "error",
  basis: routeItself,
  each: "drop",
  *check(plant, id) {
    const drop = plant.rowOf("drop", id);
    const terminal = plant.rowOf("terminal", drop.terminalId);
    const model = plant.rowOf("terminalModel", terminal.terminalModelId);
    if (drop.port <= model.portCount) return;
    const { address } = plant.rowOf("livingUnit", drop.livingUnitId);
    yield {
      subjects: [
        { table: "drop", id },
        { table: "terminal", id: terminal.id },
      ],
      message: `${address} is on port ${drop.port} of terminal ${terminal.name}, which has fewer.`,
      measured: drop.port,
      limit: model.portCount,
      unit: "",
      fixes: otherPortFix(plant, drop),
      basis: catalogueBasis(model),
    };
  },
};
