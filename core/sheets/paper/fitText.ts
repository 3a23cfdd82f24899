import type { Face } from "./displayList.ts";
import { textWidthMm } from "./measureText.ts";

/** A text as it is where it fits, else cut with an ellipsis behind. */
export function shortenText(text: string, face: Face, heightMm: number, widthMm: number): string {
  if (textWidthMm(text, face, heightMm) <= widthMm) return text;
  const characters = [...text];
  while (characters.length > 0) {
    characters.pop();
    const cut = `${characters.join("").trimEnd()}…`;
    if (textWidthMm(cut, face, heightMm) <= widthMm) return cut;
  }
  return "";
}

/** A text broken at spaces into lines no wider than asked; a word wider than that is broken where it must. */
export function wrapText(text: string, face: Face, heightMm: number, widthMm: number): readonly string[] {
  if (textWidthMm(text, face, heightMm) <= widthMm) return [text];
  const written = text.split(/\s+/).filter((one) => one !== "");
  const spaceMm = textWidthMm(" ", face, heightMm);
  const lines: string[] = [];
  let [line, lineMm] = ["", 0];
  for (const word of written.flatMap((one) => pieces(one, face, heightMm, widthMm))) {
    const wordMm = textWidthMm(word, face, heightMm);
    if (line !== "" && lineMm + spaceMm + wordMm <= widthMm) {
      line += ` ${word}`;
      lineMm += spaceMm + wordMm;
      continue;
    }
    if (line !== "") lines.push(line);
    [line, lineMm] = [word, wordMm];
  }
  return line === "" ? lines : [...lines, line];
}

function pieces(word: string, face: Face, heightMm: number, widthMm: number): readonly string[] {
  if (textWidthMm(word, face, heightMm) <= widthMm) return [word];
  const parts: string[] = [];
  let part = "";
  for (const character of word) {
    if (part !== "" && textWidthMm(part + character, face, heightMm) > widthMm) {
      parts.push(part);
      part = "";
    }
    part += character;
  }
  return part === "" ? parts : [...parts, part];
}
