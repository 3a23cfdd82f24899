import { dropCutM, dropEnds, dropRunM } from "../plant/dropView.ts";
import type { Plant } from "../plant/plant.ts";
import { companySetting } from "../rules/rule.ts";
import { fixedText } from "../units/fixedText.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation } from "./explanation.ts";
import { lengthInput, saidInput } from "./inputs.ts";

/** Distance of a drop in plan, from the terminal to the living unit. */
export function explainDropRun(plant: Plant, dropId: string, units: UnitSystem): Explanation {
  const { terminalId, livingUnitId } = plant.rowOf("drop", dropId);
  const { from, to } = dropEnds(plant, dropId);
  const place = (symbol: string, name: string, valueM: number, row: "terminal" | "livingUnit") =>
    saidInput([symbol, name], [valueM, "m"], `${fixedText(valueM, 2)} m`, [
      row,
      row === "terminal" ? terminalId : livingUnitId,
    ]);
  const { dropReachM } = plant.settings();
  const runM = dropRunM(plant, dropId);
  return {
    kind: "known",
    title: `Distance of the drop to ${plant.rowOf("livingUnit", livingUnitId).address}`,
    words: "Straight distance in plan from the terminal to the living unit on the route's grid.",
    formula: "√((E2 - E1)² + (N2 - N1)²)",
    inputs: [
      place("E1", "terminal, east on the grid", from.eastM, "terminal"),
      place("N1", "terminal, north on the grid", from.northM, "terminal"),
      place("E2", "living unit, east on the grid", to.eastM, "livingUnit"),
      place("N2", "living unit, north on the grid", to.northM, "livingUnit"),
    ],
    result: { symbol: "d", value: runM, unit: "m", text: formatLength(runM, units, "drop") },
    limit: {
      words: "Longest drop the company allows",
      value: dropReachM,
      text: formatLength(dropReachM, units, "drop"),
      basis: companySetting("dropReachM"),
    },
    source: "distance of two points in a plane",
    assumed: ["Heights at both ends are not in it."],
  };
}

/** Drop cable to cut: the distance and what goes down the house and inside. */
export function explainDropCut(plant: Plant, dropId: string, units: UnitSystem): Explanation {
  const { livingUnitId } = plant.rowOf("drop", dropId);
  const { id, dropAllowanceM } = plant.settings();
  const cutM = dropCutM(plant, dropId);
  return {
    kind: "known",
    title: `Drop to cut for ${plant.rowOf("livingUnit", livingUnitId).address}`,
    words: "Distance in plan and the company's allowance for the house side.",
    formula: "d + a",
    inputs: [
      lengthInput(["d", "distance in plan"], dropRunM(plant, dropId), [units, "drop"], ["drop", dropId]),
      lengthInput(["a", "allowance for the house side"], dropAllowanceM, [units, "drop"], ["settings", id]),
    ],
    result: { symbol: "cut", value: cutM, unit: "m", text: formatLength(cutM, units, "drop") },
    limit: null,
    source: "company setting dropAllowanceM",
    assumed: [],
  };
}
