/** A row that wants a level: how far it reaches along the page and where it leaves another row. */
export type RowReach = {
  readonly fromM: number;
  readonly toM: number;
  /** Position of the row it leaves; null for a row of its own. */
  readonly parent: number | null;
  /** 1 for a level above its parent's, -1 for below. */
  readonly side: 1 | -1;
};

type Taken = { readonly fromM: number; readonly toM: number };

/** Room between two rows on one level, m. */
const rowGapM = 60;

/**
 * Levels for rows so that no row lies on another and no leader from a junction runs through a row: what leaves farther out lies
 * nearer. Level 0 is the first row's, positive above; a row of its own lies below all that came before it.
 *
 * @param rows  parents before children
 */
export function stackRows(rows: readonly RowReach[]): readonly number[] {
  const levels: number[] = rows.map(() => 0);
  const taken = new Map<number, Taken[]>();
  const take = (level: number, reach: Taken): void => {
    taken.set(level, [...(taken.get(level) ?? []), reach]);
  };
  const isFree = (level: number, { fromM, toM }: Taken): boolean =>
    (taken.get(level) ?? []).every((one) => toM + rowGapM < one.fromM || fromM - rowGapM > one.toM);
  const settle = (position: number, level: number): void => {
    levels[position] = level;
    const row = rows[position];
    if (row) take(level, row);
    const children = rows.flatMap((one, i) => (one.parent === position ? [i] : []));
    const outermostFirst = children.sort((a, b) => (rows[b]?.fromM ?? 0) - (rows[a]?.fromM ?? 0));
    for (const child of outermostFirst) branch(child, level);
  };
  const branch = (position: number, parentLevel: number): void => {
    const row = rows[position];
    if (!row) return;
    const side = parentLevel === 0 ? row.side : Math.sign(parentLevel);
    let level = parentLevel + side;
    while (!isFree(level, row)) level += side;
    const leader = { fromM: row.fromM, toM: row.fromM };
    for (let passed = parentLevel + side; passed !== level; passed += side) take(passed, leader);
    settle(position, level);
  };
  rows.forEach((row, i) => {
    if (row.parent === null) settle(i, i === 0 ? 0 : Math.min(0, ...taken.keys()) - 1);
  });
  return levels;
}
