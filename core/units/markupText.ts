/** Controls, which XML 1.0 does not admit or advises against, and halves of a letter without the other. */
const notXml = /[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]|\p{Surrogate}/gu;

/**
 * A text as it stands between tags, or between double quotes, of SVG and KML: signs of the markup by their names, characters that
 * XML does not admit as the replacement sign.
 *
 * @source XML 1.0, fifth edition, 2.2 Characters and 2.4 Character data
 */
export function markupText(text: string): string {
  return text
    .replace(notXml, "\uFFFD")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
