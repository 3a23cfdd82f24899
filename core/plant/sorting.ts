/** Order of two texts by character code: the same on every machine. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Order of names people number: T2 before T10. */
export function byName(a: string, b: string): number {
  const [partsA, partsB] = [a, b].map((one) => one.match(/\d+|\D+/g) ?? []);
  for (const [index, part] of (partsA ?? []).entries()) {
    const other = partsB?.[index];
    if (other === undefined) return 1;
    const numeric = Number(part) - Number(other);
    const order = Number.isNaN(numeric) || numeric === 0 ? byText(part, other) : numeric;
    if (order !== 0) return order;
  }
  return (partsA?.length ?? 0) - (partsB?.length ?? 0);
}
