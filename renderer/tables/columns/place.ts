/** A row that is no row of a table: a numbered place of one, such as a port of a terminal or a fiber of a cable. */
export function placeId(ownerId: string, number: number): string {
  return `${number} ${ownerId}`;
}

/** Owner and number of a numbered place. */
export function splitPlace(id: string): { readonly ownerId: string; readonly number: number } {
  const cut = id.indexOf(" ");
  return { ownerId: id.slice(cut + 1), number: Number(id.slice(0, cut)) };
}
