/** Pictures lie in some descriptions; nobody writes a note of as many letters. */
const mostLetters = 4_000_000;

/**
 * Words of a text that may be HTML, as descriptions of KML often are: tags gone, a line for each of its lines, no blanks to indent.
 * Of a longer text than anybody writes only the beginning.
 */
export function plainOfHtml(text: string): string {
  const read = text.slice(0, mostLetters);
  return (/<[!/]?[a-z]/i.test(read) ? withoutTags(read) : read)
    .split("\n")
    .map((line) => line.split(/\s+/).filter(Boolean).join(" "))
    .filter((line) => line !== "")
    .join("\n");
}

function withoutTags(html: string): string {
  return html
    .replace(/<(?:br|\/p|\/tr|\/li|\/div|\/h[1-6])\b[^<>]*>/gi, "\n")
    .replace(/<[!/]?[a-z][^<>]*>/gi, " ")
    .replace(/&nbsp;/gi, " ")
    .replace(/&lt;/gi, "<")
    .replace(/&gt;/gi, ">")
    .replace(/&amp;/gi, "&");
}
