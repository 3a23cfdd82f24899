/** Whether two flat rows hold the same values; undo outlives the session, so identity would not do. */
export function sameRow(a: object | null, b: object | null): boolean {
  if (a === b) return true;
  if (a === null || b === null) return false;
  const left = Object.entries(a);
  if (left.length !== Object.keys(b).length) return false;
  const right = new Map(Object.entries(b));
  return left.every(([key, value]) => right.has(key) && right.get(key) === value);
}
