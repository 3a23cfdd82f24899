import { stationText } from "../paper/quantityText.ts";
import type { PlanDesk } from "./planDesk.ts";
import { shows } from "./stripStep.ts";

/** What a strip of the plan shows, in words: the way, its poles and what hangs on it, in order. */
export function stripWords({ plant, strip, steps }: PlanDesk): string {
  const system = plant.settings().unitSystem;
  const poles = [...new Set(steps.flatMap((one) => [one.step.fromPoleId, one.step.toPoleId]))];
  const cable = strip.cableId === null ? "poles without cable" : plant.rowOf("cable", strip.cableId).name;
  const hung = (table: "terminal" | "closure") =>
    steps.flatMap(({ step }) =>
      plant
        .where(table, "spanId", step.spanId)
        .map((id) => plant.rowOf(table, id))
        .filter((one) => shows(plant, step, one.offsetM))
        .map((one) => one.name),
    );
  return [
    `Plan of ${cable}, ${stationText(strip.startM, system)} to ${stationText(strip.endM, system)}.`,
    listed(
      "Poles",
      poles.map((id) => plant.rowOf("pole", id).tag),
    ),
    listed("Terminals", hung("terminal")),
    listed("Closures", hung("closure")),
    `Living units: ${strip.unitIds.length}.`,
  ]
    .filter((one) => one !== "")
    .join(" ");
}

function listed(name: string, all: readonly string[]): string {
  return all.length === 0 ? "" : `${name}: ${all.join(", ")}.`;
}
