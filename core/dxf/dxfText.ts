/** Signs that R12 writes by a code, or that ASCII spells in another way. */
const spelled: Readonly<Record<string, string>> = {
  Ø: "%%c",
  "⌀": "%%c",
  "°": "%%d",
  "±": "%%p",
  "–": "-",
  "—": "-",
  "−": "-",
  "‘": "'",
  "’": "'",
  "′": "'",
  "“": '"',
  "”": '"',
  "″": '"',
  "…": "...",
  "·": ".",
  "×": "x",
  "≤": "<=",
  "≥": ">=",
  "→": "->",
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "◆": "(!)",
  "△": "(?)",
  "○": "(i)",
};

/**
 * A text as R12 can hold it, in ASCII. Diameter, degree and plus-minus go by their codes, dashes, quotes and comparisons by their
 * spelling; every other letter by the code of four hexadecimal digits that later programs show as the letter; what that code cannot
 * reach, as a question mark. Controls become spaces. A caret and a doubled percent sign, which have a meaning of their own, are
 * written so that they show as themselves.
 *
 * @source %%c, %%d, %%p, %%%: DXF reference, text control codes, from memory; the letter code \U+XXXX: the same, since R13, from memory
 */
export function dxfText(text: string): string {
  const guarded = text.replace(/%{2,}/g, (run) => "%%%".repeat(run.length)).replaceAll("^", "^ ");
  return [...guarded.replace(/\\(?=[UuMm]\+)/g, "\\U+005C")].map(asciiOf).join("");
}

function asciiOf(character: string): string {
  const code = character.codePointAt(0) ?? 0x20;
  if (code < 0x20 || (code >= 0x7f && code <= 0xa0)) return " ";
  if (code < 0x7f) return character;
  const known = spelled[character];
  if (known !== undefined) return known;
  return code <= 0xffff ? `\\U+${code.toString(16).toUpperCase().padStart(4, "0")}` : "?";
}

/** A name as R12 takes it for a layer or block: at most 31 capitals, digits, and - _ $. */
export function dxfName(name: string): string {
  return name
    .toUpperCase()
    .replace(/[^A-Z0-9_$-]+/g, "-")
    .slice(0, 31);
}
