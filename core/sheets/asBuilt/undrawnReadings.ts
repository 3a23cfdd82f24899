import { readingText } from "../../closeout/packet/readingText.ts";
import { thingName } from "../../closeout/thingName.ts";
import { whyNotDrawn } from "../../closeout/whyNotDrawn.ts";
import { readingWords } from "../../closeout/words.ts";
import type { Plant } from "../../plant/plant.ts";
import { byName } from "../../plant/sorting.ts";
import type { ChangeGroup } from "../revised/changeLines.ts";

/** Readings that a set drawn as built leaves out, each with why; none where the design can take them all. */
export function undrawnReadings(plant: Plant): readonly ChangeGroup[] {
  const { unitSystem } = plant.settings();
  const lines = plant.all("reading").flatMap((id) => {
    const undrawn = whyNotDrawn(plant, id);
    if (!undrawn) return [];
    const reading = plant.rowOf("reading", id);
    const read = `${readingWords[reading.what]} ${readingText(reading.what, reading, unitSystem)}`;
    const name = thingName(plant, reading);
    const text = `◆ ${name.charAt(0).toUpperCase()}${name.slice(1)}, ${read}: ${undrawn.why}`;
    return [{ text, table: "reading" as const, id, isGone: false }];
  });
  const heading = "Read, and not drawn: no drawing takes it";
  return lines.length === 0 ? [] : [{ heading, lines: lines.sort((a, b) => byName(a.text, b.text)) }];
}
