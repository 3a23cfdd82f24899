/** The words of a text as they are compared: small letters and digits alone, so that `P-12`, `p12` and `P 12,` meet. */
export function foldWords(text: string): readonly string[] {
  return text
    .toLowerCase()
    .normalize("NFD")
    .split(/[\s,;/()]+/)
    .map((word) => word.replace(/[^\p{L}\p{N}]/gu, ""))
    .filter((word) => word !== "");
}
