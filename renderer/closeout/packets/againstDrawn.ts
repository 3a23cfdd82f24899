import { type AskedReading, askedReadings } from "../../../core/closeout/askedReadings.ts";
import type { ReadContent } from "../../../core/closeout/packet/packetFile.ts";
import { readingText, writingOf } from "../../../core/closeout/packet/readingText.ts";
import type { Subject } from "../../../core/closeout/subject.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { formatLossDb } from "../../../core/units/formatLossDb.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { packetWords } from "./words.ts";

type Drawn = AskedReading["drawn"];

/** What was drawn or is expected where a reading was taken; null where nothing is. */
export function drawnOf(plant: Plant, { kind, subjectId, port, alongId }: Subject, readingId: string): Drawn {
  const subject = { kind, subjectId, port, alongId };
  return askedReadings(plant, subject).find((one) => one.id === readingId)?.drawn ?? null;
}

/** How a reading stands to what is drawn, in words; empty where nothing is drawn. */
export function againstDrawn(what: AskedReading["what"], read: ReadContent, drawn: Drawn, units: UnitSystem): string {
  if (drawn === null) return "";
  if (drawn.kind === "text") return read.text.trim() === drawn.text ? packetWords.asDrawn : packetWords.notAsDrawn;
  if (read.value === null) return "";
  const [least, most] = ends(drawn);
  const over = read.value > most ? read.value - most : read.value < least ? read.value - least : 0;
  if (Math.abs(over) < 1e-9) return packetWords.asDrawn;
  const writing = writingOf(what);
  if (writing !== "length" && writing !== "power" && writing !== "resistance") return packetWords.notAsDrawn;
  const size = Math.abs(over);
  const by = writing === "power" ? formatLossDb(size) : readingText(what, { value: size, text: "" }, units);
  return over > 0 ? packetWords.more(by) : packetWords.less(by);
}

function ends(drawn: Exclude<Drawn, null | { readonly kind: "text" }>): readonly [least: number, most: number] {
  switch (drawn.kind) {
    case "figure":
      return [drawn.value, drawn.value];
    case "range":
      return [drawn.least, drawn.most];
    case "most":
      return [Number.NEGATIVE_INFINITY, drawn.most];
  }
}
