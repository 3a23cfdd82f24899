import type { ReadingKind } from "../../model/closeoutRows.ts";
import type { ReadContent } from "./packetFile.ts";
import { writingOf } from "./readingText.ts";

/** Why a reading cannot be of its kind, in words; null where it can. */
export function unsoundWords(what: ReadingKind, wavelengthNm: number, { value, text }: ReadContent): string | null {
  const writing = writingOf(what);
  if (writing === "words") return text.trim() === "" || value !== null ? "It has no words." : null;
  if (value === null) return "It has no figure.";
  if (text !== "") return "It has words beside its figure.";
  if (writing === "yesNo" && value !== 0 && value !== 1) return "It is neither yes nor no.";
  if (writing === "port" && !(Number.isInteger(value) && value >= 1)) return "That is no port.";
  if ((writing === "figure" || writing === "resistance") && value < 0) return "It is under nothing.";
  if (writing === "power" ? wavelengthNm === 0 : wavelengthNm !== 0)
    return "Its wavelength does not go with what was read.";
  return null;
}
