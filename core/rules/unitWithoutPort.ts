import { freeId } from "../plant/freeId.ts";
import { terminalsNear } from "../plant/near.ts";
import { nearestSparePort } from "./portFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const unitWithoutPort: Rule = {
  id: "unit-without-port",
  title: "Every living unit has a port",
  compares: "Each living unit, against the drops: one must reach it.",
  severity: "error",
  basis: routeItself,
  each: "livingUnit",
  *check(plant, id) {
    if (plant.where("drop", "livingUnitId", id).length > 0) return;
    const unit = plant.rowOf("livingUnit", id);
    const spare = nearestSparePort(plant, unit);
    const reached = terminalsNear(plant, unit, plant.settings().dropReachM).length;
    const why = spare
      ? `terminal ${spare.name} has one to spare`
      : reached > 0
        ? "no terminal within reach has one to spare with light"
        : "no terminal is within reach";
    yield {
      subjects: [{ table: "livingUnit", id }],
      message: `${unit.address} has no port: ${why}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: spare
        ? [
            {
              label: `Give it port ${spare.port} of terminal ${spare.name}`,
              command: "drop.add",
              input: {
                dropId: freeId(plant, "drop", `${id}-drop`),
                terminalId: spare.terminalId,
                port: spare.port,
                livingUnitId: id,
              },
            },
          ]
        : [],
    };
  },
};
