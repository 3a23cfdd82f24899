import { forbiddenOver, passedWords } from "../plant/dropPassing.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { nearestSparePort } from "./portFix.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const dropOverForbidden: Rule = {
  id: "drop-over-forbidden",
  title: "No drop passes over what it may not",
  compares:
    "The straight way from a port to its living unit, against what lies under the spans and before the unit that the catalogue lets no drop pass.",
  severity: "error",
  basis: { ...routeItself, document: "what drops may pass, in the catalogue" },
  each: "drop",
  *check(plant, id) {
    const { terminalId, livingUnitId } = plant.rowOf("drop", id);
    const unit = plant.rowOf("livingUnit", livingUnitId);
    const passed = forbiddenOver(plant, terminalHang(plant, terminalId), unit);
    if (!passed) return;
    const what = `${passed.name === "" ? "the " : ""}${passedWords(passed)}`;
    const other = nearestSparePort(plant, unit);
    yield {
      subjects: [
        { table: "drop", id },
        { table: "livingUnit", id: livingUnitId },
        { table: "terminal", id: terminalId },
      ],
      message: `The drop from terminal ${plant.rowOf("terminal", terminalId).name} to ${unit.address} passes over ${what}, which no drop may.`,
      measured: null,
      limit: null,
      unit: "",
      basis: catalogueBasis(passed.rule),
      fixes: other
        ? [
            {
              label: `Move to port ${other.port} of terminal ${other.name}`,
              command: "drop.move",
              input: { dropId: id, terminalId: other.terminalId, port: other.port },
            },
          ]
        : [],
    };
  },
};
