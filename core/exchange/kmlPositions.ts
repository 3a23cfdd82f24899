import { decimalDegrees } from "./decimalDegrees.ts";

/**
 * Positions as KML writes them, `lon,lat[,alt]` with blanks between. Blanks around a comma are taken for a slip of whoever typed
 * them. What is no number comes as NaN, for the reader of geometries to refuse.
 *
 * @param mostCount  no more are read
 * @source OGC 07-147r2, KML 2.2, coordinates; from memory
 */
export function kmlPositions(text: string, mostCount: number): (readonly number[])[] {
  const positions: number[][] = [];
  let isAfterComma = false;
  for (const [token] of text.matchAll(/,|[^\s,]+/g)) {
    const position = positions.at(-1);
    if (token === ",") {
      if (isAfterComma) position?.push(Number.NaN);
      isAfterComma = true;
      continue;
    }
    if (isAfterComma && position) position.push(decimalDegrees(token));
    else if (positions.length === mostCount) break;
    else positions.push([decimalDegrees(token)]);
    isAfterComma = false;
  }
  return positions;
}
