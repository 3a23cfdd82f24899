import { isFar } from "../../core/closeout/packet/farReading.ts";
import type { AskedReading, ReadContent } from "../../core/closeout/packet/packetFile.ts";
import { parseReading, readingText, writingOf } from "../../core/closeout/packet/readingText.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { words } from "./words.ts";

/** How what is typed stands: nothing, understood, understood but far from what is drawn, or not readable. */
export type Judged =
  | { readonly kind: "empty" }
  | { readonly kind: "good" | "far"; readonly content: ReadContent; readonly says: string }
  | { readonly kind: "bad"; readonly says: string };

/** Judges what is typed into a field. */
export function judge(asked: AskedReading, typed: string, system: UnitSystem): Judged {
  if (typed.trim() === "") return { kind: "empty" };
  const parsed = parseReading(asked.what, typed, system);
  if (!parsed.ok) return { kind: "bad", says: `${parsed.what} ${parsed.mend}` };
  const content: ReadContent = { value: parsed.value, text: parsed.text };
  const text = readingText(asked.what, content, system);
  const isOtherTag = asked.what === "houseTag" && asked.drawnText !== "" && text !== asked.drawnText;
  if (isOtherTag || isFar(content.value, asked.drawn, asked.tolerance))
    return { kind: "far", content, says: words.far(text, butWhat(asked)) };
  return { kind: "good", content, says: writingOf(asked.what) === "words" ? "" : words.understood(text) };
}

/** What a reading is held against, in words; empty where that goes without saying. */
function butWhat({ what, drawnText }: AskedReading): string {
  if (drawnText === "") return "";
  return what === "power" || what === "resistance" ? words.butExpected(drawnText) : words.butDrawn(drawnText);
}
