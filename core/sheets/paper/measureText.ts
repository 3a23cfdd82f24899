import type { Face, TextMark } from "./displayList.ts";
import { fontMetrics } from "./fontMetrics.ts";
import { type OrientedBox, turnedBox } from "./orientedBox.ts";

export type FontFace = keyof typeof fontMetrics;

type Metrics = {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  readonly ascent: number;
  readonly accentedAscent: number;
  readonly descent: number;
  readonly widths: ReadonlyMap<number, number>;
};

/** Drawn for a character that no face has. */
const replacement = "\uFFFD";

/** Capitals that carry an accent rise over every plain letter. */
const accentedCapital = /[^\P{Lu}A-Z]/u;

const metrics: Readonly<Record<FontFace, Metrics>> = {
  narrow: readMetrics("narrow"),
  narrowBold: readMetrics("narrowBold"),
  plain: readMetrics("plain"),
  plainBold: readMetrics("plainBold"),
  symbols: readMetrics("symbols"),
};

/** Characters of one text that are drawn from one font. */
type TextRun = {
  readonly font: FontFace;
  readonly text: string;
  readonly widthMm: number;
  readonly sizeMm: number;
};

/**
 * A text cut into runs that each have every glyph in their font: the face asked for, or the symbols face for what it lacks. Line
 * ends and other controls become spaces; a character that neither has becomes the replacement sign.
 *
 * @param heightMm  height of a capital letter, mm, > 0; both fonts are sized to it
 */
export function textRuns(text: string, face: Face, heightMm: number): readonly TextRun[] {
  const runs: TextRun[] = [];
  let [font, run, widthMm]: [FontFace, string, number] = [face, "", 0];
  const flush = () => {
    const { unitsPerEm, capHeight } = metrics[font];
    if (run !== "") runs.push({ font, text: run, widthMm, sizeMm: (heightMm * unitsPerEm) / capHeight });
  };
  for (const written of text) {
    const glyph = glyphFor(written, face);
    if (glyph.font !== font) {
      flush();
      [font, run, widthMm] = [glyph.font, "", 0];
    }
    run += glyph.character;
    widthMm += (glyph.advance * heightMm) / metrics[font].capHeight;
  }
  flush();
  return runs;
}

/** Width of a text on paper, mm. */
export function textWidthMm(text: string, face: Face, heightMm: number): number {
  let widthMm = 0;
  for (const written of text) {
    const glyph = glyphFor(written, face);
    widthMm += (glyph.advance * heightMm) / metrics[glyph.font].capHeight;
  }
  return widthMm;
}

/** True where every character of a text has a glyph of its own in the face or in the symbols face. */
export function hasGlyphs(text: string, face: Face): boolean {
  return [...text].every((character) => glyphFor(character, face).character === character);
}

/** Depth of the tails and height of the tallest letters of a line of text, mm from its base line. */
export function textExtentMm(
  text: string,
  face: Face,
  heightMm: number,
): { readonly downMm: number; readonly upMm: number } {
  const { ascent, accentedAscent, descent, capHeight } = metrics[face];
  const up = accentedCapital.test(text) ? accentedAscent : ascent;
  return { downMm: (descent / capHeight) * heightMm, upMm: (up / capHeight) * heightMm };
}

/** The box a text fills on paper, turned as the text is. */
export function textBox(mark: TextMark): OrientedBox {
  const width = textWidthMm(mark.text, mark.face, mark.heightMm);
  const { downMm, upMm } = textExtentMm(mark.text, mark.face, mark.heightMm);
  const left = mark.align === "left" ? 0 : mark.align === "middle" ? -width / 2 : -width;
  return turnedBox(mark.atMm, mark.turnRad, left, -downMm, width, downMm + upMm);
}

/** A character as it is drawn: from which font, and how wide in that font's units. */
type Glyph = { readonly font: FontFace; readonly character: string; readonly advance: number };

const faceGlyphs: Readonly<Record<Face, Map<string, Glyph>>> = {
  narrow: new Map(),
  narrowBold: new Map(),
  plain: new Map(),
  plainBold: new Map(),
};

function glyphFor(written: string, face: Face): Glyph {
  const known = faceGlyphs[face].get(written);
  if (known) return known;
  const glyph = findGlyph(written, face);
  faceGlyphs[face].set(written, glyph);
  return glyph;
}

function findGlyph(written: string, face: Face): Glyph {
  const code = codeOf(written);
  const character = code < 0x20 || (code >= 0x7f && code <= 0xa0) ? " " : written;
  const from = (font: FontFace, drawn: string) => {
    const advance = metrics[font].widths.get(codeOf(drawn));
    return advance === undefined ? undefined : { font, character: drawn, advance };
  };
  return (
    from(face, character) ??
    from("symbols", character) ??
    from("symbols", replacement) ?? { font: "symbols", character: replacement, advance: 0 }
  );
}

function codeOf(character: string): number {
  return character.codePointAt(0) ?? 0x20;
}

function readMetrics(face: FontFace): Metrics {
  const { codes, widths, ...figures } = fontMetrics[face];
  const table = new Map<number, number>();
  const widthList = widths.split(" ").map(Number);
  let next = 0;
  for (const part of codes.split(" ")) {
    const [first = 0, last = first] = part.split("-").map(Number);
    for (let code = first; code <= last; code += 1, next += 1) table.set(code, widthList[next] ?? 0);
  }
  return { ...figures, widths: table };
}
