const parts = /(\d+)|(\D+)/g;

/** Order of ids and tags as people count: T-2 before T-10. */
export function compareNatural(a: string, b: string): number {
  const left = a.match(parts) ?? [];
  const right = b.match(parts) ?? [];
  for (let index = 0; index < Math.min(left.length, right.length); index += 1) {
    const one = left[index] ?? "";
    const other = right[index] ?? "";
    if (one === other) continue;
    const byNumber = Number(one) - Number(other);
    if (Number.isFinite(byNumber) && byNumber !== 0) return byNumber;
    return one < other ? -1 : 1;
  }
  return left.length - right.length || (a < b ? -1 : a > b ? 1 : 0);
}
