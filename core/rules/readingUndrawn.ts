import { subjectTables } from "../closeout/subject.ts";
import { thingName } from "../closeout/thingName.ts";
import { whyNotDrawn } from "../closeout/whyNotDrawn.ts";
import { readingWords } from "../closeout/words.ts";
import { type Rule, routeItself } from "./rule.ts";

/** Told also where what was read is nonsense, such as a height in inches taken for feet: nothing else would find it. */
export const readingUndrawn: Rule = {
  id: "reading-undrawn",
  title: "What was read can be drawn as built",
  compares:
    "A height, an offset, a coil or the port of a drop as it was read, against what its pole, span, coil and terminal can take.",
  severity: "warning",
  basis: routeItself,
  each: "reading",
  *check(plant, id) {
    const undrawn = whyNotDrawn(plant, id);
    if (!undrawn) return;
    const reading = plant.rowOf("reading", id);
    const { mostM } = undrawn;
    yield {
      subjects: [
        { table: "reading", id },
        { table: subjectTables[reading.kind], id: reading.subjectId },
      ],
      message: `What was read of ${thingName(plant, reading)} (${readingWords[reading.what]}) stays out of the as-built set: ${undrawn.why}.`,
      measured: mostM === null ? null : reading.value,
      limit: mostM,
      unit: "m",
      fixes: [{ label: "Remove the reading", command: "reading.remove", input: { readingId: id } }],
    };
  },
};
