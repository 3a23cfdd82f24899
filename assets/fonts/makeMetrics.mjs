/**
 * Writes core/sheets/paper/fontMetrics.ts: the advance width of every character a drawing may hold, read from the fonts that the
 * PDF writer embeds. Run it again after a font package changes. With --print it only prints what it would write.
 */
import { writeFileSync } from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
const fontkit = createRequire(require.resolve("pdfkit"))("fontkit");

const faces = {
  narrow: "@fontsource/barlow-condensed/files/barlow-condensed-latin-500-normal.woff",
  narrowBold: "@fontsource/barlow-condensed/files/barlow-condensed-latin-600-normal.woff",
  plain: "@fontsource/ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-400-normal.woff",
  plainBold: "@fontsource/ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-600-normal.woff",
  symbols: "dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf",
};

/** What the fallback face is kept for: further Latin, Greek, Cyrillic, punctuation, arrows, mathematics, shapes. */
const fallbackRanges = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x370, 0x3ff],
  [0x400, 0x45f],
  [0x2010, 0x2044],
  [0x2070, 0x208e],
  [0x20a0, 0x20bf],
  [0x2100, 0x213a],
  [0x2150, 0x215e],
  [0x2190, 0x21ff],
  [0x2200, 0x22ff],
  [0x2300, 0x2311],
  [0x2500, 0x25ff],
  [0x2610, 0x2612],
  [0x2713, 0x2717],
  [0xfffd, 0xfffd],
];

/** Kerning and ligatures off, figures of equal width: then a text is as wide as its characters. */
const features = { kern: false, liga: false, frac: false, tnum: true };

function inFallback(code) {
  return fallbackRanges.some(([first, last]) => code >= first && code <= last);
}

function drawable(code) {
  return (
    code >= 0x20 &&
    code < 0xfffe &&
    code !== 0x7f &&
    code !== 0xad &&
    !(code >= 0x80 && code < 0xa0) &&
    !(code >= 0x200b && code <= 0x200f)
  );
}

/** Empty glyphs past the end of a font's outlines cannot be read: the writer could not embed them either. */
function readable(layout, code) {
  try {
    return layout(String.fromCodePoint(code)).positions[0].xAdvance > 0;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

function ranges(codes) {
  const parts = [];
  for (const code of codes) {
    const last = parts.at(-1);
    if (last && last[1] === code - 1) last[1] = code;
    else parts.push([code, code]);
  }
  return parts.map(([first, last]) => (first === last ? `${first}` : `${first}-${last}`)).join(" ");
}

function metricsOf(name, path) {
  const font = fontkit.openSync(require.resolve(path));
  const layout = (text) => font.layout(text, features);
  const codes = [...font.characterSet]
    .sort((a, b) => a - b)
    .filter((code) => drawable(code) && (name !== "symbols" || inFallback(code)) && readable(layout, code));
  const widths = codes.map((code) => layout(String.fromCodePoint(code)).positions[0].xAdvance);
  const box = (text) => layout(text).glyphs.map((glyph) => glyph.bbox);
  const capHeight = Math.max(...box("HEX").map((one) => one.maxY));
  return {
    unitsPerEm: font.unitsPerEm,
    capHeight,
    ascent: Math.max(...box("bdfhkl()/").map((one) => one.maxY)),
    accentedAscent: Math.max(...box("ÀÉÑÖÅ").map((one) => one.maxY)),
    descent: -Math.min(...box("gjpqy(),;/").map((one) => one.minY)),
    codes: ranges(codes),
    widths: widths.join(" "),
  };
}

const records = Object.entries(faces).map(([name, path]) => {
  const { codes, widths, ...figures } = metricsOf(name, path);
  const lines = Object.entries(figures).map(([key, value]) => `    ${key}: ${value},`);
  // biome folds a long string under its key, so this does the same
  return `  ${name}: {\n${lines.join("\n")}\n    codes:\n      "${codes}",\n    widths:\n      "${widths}",\n  },`;
});

const text = `/**
 * Advance widths of the drawing fonts in font units, one for each character code; made by assets/fonts/makeMetrics.mjs, do not
 * edit. Heights are of capitals, of the tallest letters and of the deepest tails.
 */
export const fontMetrics = {
${records.join("\n")}
} as const;
`;

if (process.argv.includes("--print")) process.stdout.write(text);
else writeFileSync(new URL("../../core/sheets/paper/fontMetrics.ts", import.meta.url), text);
