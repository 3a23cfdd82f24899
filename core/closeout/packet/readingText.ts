import type { ReadingKind } from "../../model/closeoutRows.ts";
import { metresPerFoot, metresPerInch } from "../../units/constants.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatPowerDbm } from "../../units/formatPowerDbm.ts";
import { parseLengthM } from "../../units/parseLength.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { ReadContent } from "./packetFile.ts";

/** How a kind of reading is written. */
type Writing = "length" | "figure" | "power" | "resistance" | "yesNo" | "port" | "words";

const writings: Readonly<Record<ReadingKind, Writing>> = {
  offset: "length",
  slack: "length",
  height: "length",
  mark: "figure",
  markBefore: "figure",
  markAfter: "figure",
  power: "power",
  continuity: "yesNo",
  resistance: "resistance",
  portOfDrop: "port",
  houseTag: "words",
  note: "words",
};

/** What was read, or why it cannot be taken down and what to write instead. */
export type ParsedReading =
  | ({ readonly ok: true } & ReadContent)
  | { readonly ok: false; readonly what: string; readonly mend: string };

/** How a kind of reading is written down. */
export function writingOf(what: ReadingKind): Writing {
  return writings[what];
}

/** The unit a plain figure is in. */
export function plainUnit(what: ReadingKind, system: UnitSystem): string {
  if (what === "offset") return system === "us" ? "in" : "m";
  const units: Partial<Record<Writing, string>> = {
    length: system === "us" ? "ft" : "m",
    power: "dBm",
    resistance: "ohm",
  };
  return units[writings[what]] ?? "";
}

/** Reads what a crew typed, in any unit the trade writes; a plain figure is in the unit beside the field. */
export function parseReading(what: ReadingKind, typed: string, system: UnitSystem): ParsedReading {
  const text = typed.trim();
  switch (writings[what]) {
    case "length": {
      const isPlain = /^-?[\d.]+$/.test(text);
      const parsed = parseLengthM(isPlain ? `${text} ${plainUnit(what, system)}` : text, system);
      return parsed.ok ? figureOf(parsed.valueM) : parsed;
    }
    case "figure":
      return /^\d{1,7}(\.\d{1,2})?$/.test(text)
        ? figureOf(Number(text))
        : wrong(text, "the figure printed on the sheath", "Write the figure alone, as it is printed: 12345.");
    case "power":
      return signedFigure(text.replace(/\s*dbm$/i, ""), text, "a power", "Write it in dBm: -18.4.");
    case "resistance":
      return /^\d+(\.\d+)?( ?(ohms?|Ω))?$/i.test(text)
        ? figureOf(Number.parseFloat(text))
        : wrong(text, "a resistance", "Write it in ohm: 12.5.");
    case "yesNo":
      return /^(yes|no)$/i.test(text)
        ? figureOf(/^yes$/i.test(text) ? 1 : 0)
        : wrong(text, "yes or no", "Write yes or no.");
    case "port":
      return /^[1-9]\d?$/.test(text)
        ? figureOf(Number(text))
        : wrong(text, "a port", "Write the port's number as it stands on the face.");
    case "words":
      return text.length <= 2000 && text !== ""
        ? { ok: true, value: null, text }
        : wrong(text.slice(0, 20), "a note of up to 2000 letters", "Write less.");
  }
}

/** Prints what was read, fine enough that two readings that differ by what a tape shows print differently. */
export function readingText(what: ReadingKind, { value, text }: ReadContent, system: UnitSystem): string {
  if (value === null) return text;
  switch (writings[what]) {
    case "length":
      return lengthText(what, value, system);
    case "power":
      return formatPowerDbm(value);
    case "resistance":
      return `${plain(value, 2)} ohm`;
    case "yesNo":
      return value === 1 ? "yes" : "no";
    default:
      return plain(value, 2);
  }
}

/** Whether two readings say the same; who said it does not matter. */
export function saysSame(one: ReadContent | null, other: ReadContent | null): boolean {
  if (one === null || other === null) return one === other;
  return one.value === other.value && one.text.trim() === other.text.trim();
}

function lengthText(what: ReadingKind, valueM: number, system: UnitSystem): string {
  if (system === "metric") return `${plain(valueM, 3)} m`;
  if (what === "offset") return `${plain(valueM / metresPerInch, 2)} in`;
  if (what === "slack") return `${plain(valueM / metresPerFoot, 2)} ft`;
  const tenths = Math.round(Math.abs(valueM / metresPerInch) * 10);
  return `${valueM < 0 ? "-" : ""}${Math.floor(tenths / 120)} ft ${plain((tenths % 120) / 10, 1)} in`;
}

/** With no more decimals than it needs. */
function plain(value: number, mostDecimals: number): string {
  return String(Number(fixedText(value, mostDecimals)));
}

function figureOf(value: number): ParsedReading {
  return { ok: true, value, text: "" };
}

function signedFigure(figures: string, typed: string, thing: string, mend: string): ParsedReading {
  const plainMinus = figures.replace(/[\u2212\u2013]/g, "-").trim();
  return /^[-+]?\d{1,3}(\.\d+)?$/.test(plainMinus) ? figureOf(Number(plainMinus)) : wrong(typed, thing, mend);
}

function wrong(typed: string, thing: string, mend: string): ParsedReading {
  return { ok: false, what: `"${typed}" cannot be read as ${thing}.`, mend };
}
