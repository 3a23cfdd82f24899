const trailingUnit = /^(.*\S),? (?:(?:apt|apartment|unit|suite|ste)\.? ?#?|#) ?[\w-]+$/i;

/** Address parts as columns give them; any may be empty. */
export type AddressParts = {
  readonly address: string;
  readonly houseNumber: string;
  readonly houseName: string;
  readonly street: string;
  readonly unit: string;
};

/** One line of address and, where it is a unit of a building, the building's own line. */
export type UnitAddress = { readonly address: string; readonly building: string };

/**
 * Joins an address from a full text, or from house name, number and street; then the unit. Null where nothing tells the house:
 * a street alone is no address.
 */
export function joinAddress(parts: AddressParts): UnitAddress | null {
  const houseAndStreet = [parts.houseNumber, parts.street].filter((part) => part !== "").join(" ");
  const built = [parts.houseName, houseAndStreet].filter((part) => part !== "").join(", ");
  const isHouseTold = parts.houseNumber !== "" || parts.houseName !== "" || (parts.unit !== "" && parts.street !== "");
  const base = parts.address !== "" ? parts.address : isHouseTold ? built : "";
  if (base === "") return null;
  if (parts.unit !== "") {
    const unit = /^\p{L}+\.? |^#/u.test(parts.unit) ? parts.unit : `Unit ${parts.unit}`;
    const isThere = base.toLowerCase().endsWith(` ${parts.unit.toLowerCase()}`);
    return isThere
      ? { address: base, building: trailingUnit.exec(base)?.[1]?.replace(/,$/, "") ?? base }
      : { address: `${base} ${unit}`, building: base };
  }
  return { address: base, building: trailingUnit.exec(base)?.[1]?.replace(/,$/, "") ?? "" };
}

/** Two spellings of one address compare equal: case, blanks, commas and full stops do not count. */
export function addressKey(address: string): string {
  return address
    .toLowerCase()
    .replace(/[\s,.]+/g, " ")
    .trim();
}
