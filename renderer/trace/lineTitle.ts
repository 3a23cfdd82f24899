import { placeAt } from "../../core/closeout/traceOnRoute.ts";
import { landmarkName, placeName } from "../../core/closeout/traceWords.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { ShownTrace, TraceLine } from "./shownTrace.ts";
import { lineKinds, traceWords } from "./words.ts";

/** What stands at a line of a trace, and what is wrong with it. */
export function lineTitle(plant: Plant, { on }: ShownTrace, { landmark, event, kind }: TraceLine): string {
  if (kind === "untold") return traceWords.event(event?.number ?? 0);
  if (kind === "break" && on?.break)
    return traceWords.broken(formatLength(on.break.plusMinusM, plant.settings().unitSystem, "span"));
  const name = landmark ? landmarkName(plant, landmark) : "";
  return [name, lineKinds[kind]].filter((one) => one !== "").join(", ");
}

/** The place on the strand of an event where nothing is drawn; null where something is, or the fiber has no way. */
export function linePlace(plant: Plant, { on }: ShownTrace, { event, kind }: TraceLine): string | null {
  if (!on || !event || (kind !== "unmatched" && kind !== "break")) return null;
  const place = placeAt(plant, on, event.atM);
  return place && placeName(plant, place);
}
