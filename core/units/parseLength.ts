import type { UnitSystem } from "./unitSystem.ts";

/** A length read from text, or why it could not be read and what to write instead. */
export type ParsedLength =
  | { readonly ok: true; readonly valueM: number }
  | { readonly ok: false; readonly what: string; readonly mend: string };

const number = String.raw`\d+(?:\.\d*)?|\.\d+`;
const amount = String.raw`(?:\d+[ -]+)?\d+ ?\/ ?\d+|${number}`;
const feetMark = String.raw`(?:ft\.?|foot|feet|')`;
const inchMark = String.raw`(?:inches|inch|in\.?|")`;
const metricMark = "km|cm|mm|met(?:re|er)s?|m";
const feetThenInches = new RegExp(`^(\\d+) ?${feetMark}[ -]*(${amount}) ?${inchMark}?$`);
const oneUnit = new RegExp(`^(${amount}) ?(${feetMark}|${inchMark}|${metricMark})?$`);

/**
 * Reads a length as the trade writes it: `36 in`, `3'`, `10 ft 6 in`, `10'-6"`, `3 1/2"`, `0.9 m`, `90 cm`, `900 mm`, `1.2 km`.
 *
 * A leading minus makes the whole length negative. After feet a bare number is inches, and must be under 12.
 * A comma is refused, since it means a decimal to one reader and a thousand to the next.
 *
 * @param text        what was typed or read from a file
 * @param defaultUnit what a plain number is in: feet when "us", metres when "metric"
 * @returns the length in metres, correctly rounded for whole and half feet and inches, or what is wrong and how to mend it
 */
export function parseLengthM(text: string, defaultUnit: UnitSystem): ParsedLength {
  const plain = withPlainMarks(text);
  if (/\d,\d/.test(plain)) {
    return {
      ok: false,
      what: `"${text}" has a comma in a number.`,
      mend: "Write decimals with a point and thousands without a mark: 1234.5.",
    };
  }
  const isNegative = plain.startsWith("-");
  const size = plain.replace(/^[-+] ?/, "");
  const parsed = parseFeetThenInches(size) ?? parseOneUnit(size, defaultUnit);
  if (parsed === null || (parsed.ok && !Number.isFinite(parsed.valueM))) {
    return {
      ok: false,
      what: `"${text}" cannot be read as a length.`,
      mend: "Write it like 36 in, 10 ft 6 in, 10'-6\" or 0.9 m.",
    };
  }
  return parsed.ok && isNegative && parsed.valueM !== 0 ? { ok: true, valueM: -parsed.valueM } : parsed;
}

function withPlainMarks(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/\s+/g, " ")
    .replace(/[\u2212\u2013]/g, "-")
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"');
}

function parseFeetThenInches(size: string): ParsedLength | null {
  const match = feetThenInches.exec(size);
  if (match === null) return null;
  const feet = Number(match[1]);
  const inches = amountOf(match[2] ?? "");
  if (!(inches < 12)) {
    return {
      ok: false,
      what: `${match[2]} inches after feet is a foot or more.`,
      mend: "Write inches under 12 after feet, or the whole length in inches.",
    };
  }
  return { ok: true, valueM: metresOf(feet * 12 + inches, "in") };
}

function parseOneUnit(size: string, defaultUnit: UnitSystem): ParsedLength | null {
  const match = oneUnit.exec(size);
  if (match === null) return null;
  const unit = match[2] ?? (defaultUnit === "us" ? "ft" : "m");
  return { ok: true, valueM: metresOf(amountOf(match[1] ?? ""), unit) };
}

function amountOf(text: string): number {
  const fraction = /^(?:(\d+)[ -]+)?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (fraction === null) return Number(text);
  return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
}

function metresOf(count: number, unit: string): number {
  // A product of whole numbers and one division round once: 36 in is 0.9144 to the last bit, and 12 * 0.0254 would not be 0.3048.
  if (unit === "km") return count * 1000;
  if (unit === "cm") return count / 100;
  if (unit === "mm") return count / 1000;
  if (unit.startsWith("m")) return count;
  if (unit.startsWith("f") || unit === "'") return (count * 3048) / 10000;
  return (count * 254) / 10000;
}
