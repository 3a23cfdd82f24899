import { findCommand } from "../../../core/edits/register.ts";
import { runSteps } from "../../../core/edits/runSteps.ts";
import type { RowChange } from "../../../core/model/rowChange.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { RefKey } from "../../app/ref.ts";
import type { Arranging } from "./arranging.ts";
import { evenTerminals, serveFrom } from "./dropRow.ts";
import { hangAlong } from "./hangAlong.ts";
import { linePoles, spacePoles } from "./poleRow.ts";
import { alignTerminals, spaceTerminals, turnTerminals } from "./terminalRow.ts";
import type { Wanted } from "./wanted.ts";

/** What would be done and every row as it would be; worked out by the very steps that are then carried out. */
export type Arrangement = Wanted & { readonly rows: readonly RowChange[] };

/** What is asked for, tried on the route as it is. */
export function arrangementOf(
  plant: Plant,
  selection: readonly RefKey[],
  asked: Arranging,
  units: UnitSystem,
): Arrangement {
  const wanted = wantedOf(plant, selection, asked, units);
  if (!wanted.isReady) return { ...wanted, rows: [] };
  const { rows, refused } = runSteps(findCommand, plant.route(), wanted.steps);
  const [fault] = refused.values();
  return fault ? { isReady: false, reason: `${fault.what} ${fault.mend}`, rows: [] } : { ...wanted, rows };
}

function wantedOf(plant: Plant, selection: readonly RefKey[], asked: Arranging, units: UnitSystem): Wanted {
  switch (asked.way) {
    case "spaceTerminals":
      return spaceTerminals(plant, selection, units);
    case "alignTerminals":
      return alignTerminals(plant, selection, asked, units);
    case "turnTerminals":
      return turnTerminals(selection);
    case "evenTerminals":
      return evenTerminals(plant, selection, asked, units);
    case "serveFrom":
      return serveFrom(plant, selection, units);
    case "spacePoles":
      return spacePoles(plant, selection, units);
    case "linePoles":
      return linePoles(plant, selection);
    case "hangAlong":
      return hangAlong(plant, selection, asked);
  }
}
