import { type LightMargin, lightMargin } from "../../core/plant/lightMargin.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type TerminalLight, terminalLight } from "../../core/plant/terminalLight.ts";

/** The light of a terminal with that of each of its drops, as it was reckoned last. */
export type SeenLight = { readonly light: TerminalLight; readonly margins: ReadonlyMap<string, LightMargin> };

/** Light by terminal, as far as it is reckoned: what stands there may be one edit old until its turn comes. */
export type LightSeen = ReadonlyMap<string, SeenLight>;

/** Reckons the light of terminals one after the other and writes it down; what an edit left alone is there at once. */
export function* reckonLight(
  plant: Plant,
  terminalIds: readonly string[],
  seen: Map<string, SeenLight>,
): Generator<void, void> {
  for (const id of terminalIds) {
    const light = terminalLight(plant, id);
    if (seen.get(id)?.light !== light) {
      const margins = plant
        .where("drop", "terminalId", id)
        .map((dropId) => [dropId, lightMargin(plant, dropId)] as const);
      seen.set(id, { light, margins: new Map(margins) });
    }
    yield;
  }
}
