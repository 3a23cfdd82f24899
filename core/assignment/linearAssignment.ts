/** A place for every unit, or the units that compete for fewer places than they are. */
export type Assignment =
  | { readonly kind: "assigned"; readonly columns: readonly number[]; readonly cost: number }
  | {
      readonly kind: "infeasible";
      /** Rows that share too few columns. */
      readonly rows: readonly number[];
      /** All columns those rows may have together: one fewer than the rows. */
      readonly columns: readonly number[];
    };

/**
 * Each row on a column of its own at the least sum of costs.
 *
 * Shortest augmenting paths with prices, row by row: `rows^2 * columns` steps.
 *
 * @param costs `rows x columns`, finite or infinity for a pair that may not be; there may be more columns than rows
 * @returns columns: that of each row, from 0.
 * @throws RangeError when rows differ in length or a cost is NaN or minus infinity
 * @source equal to another implementation of it in tests/property/assignment.test.ts
 */
export function linearAssignment(costs: readonly (readonly number[])[]): Assignment {
  const columnCount = costs[0]?.length ?? 0;
  for (const row of costs) requireRow(row, columnCount);
  const rowPrices = costs.map(() => 0);
  const columnPrices = Array.from({ length: columnCount }, () => 0);
  const rowOf: (number | undefined)[] = Array.from({ length: columnCount });
  for (let row = 0; row < costs.length; row += 1) {
    const tree = growTree(costs, { row, rowPrices, columnPrices, rowOf });
    if (tree.end === null) {
      const reached = [...tree.reached].sort((a, b) => a - b);
      const rows = [row, ...reached.flatMap((column) => rowOf[column] ?? [])].sort((a, b) => a - b);
      return { kind: "infeasible", rows, columns: reached };
    }
    for (let column: number | null = tree.end; column !== null; ) {
      const before: number | null = tree.before.get(column) ?? null;
      rowOf[column] = before === null ? row : rowOf[before];
      column = before;
    }
  }
  const columns = costs.map((_, row) => rowOf.indexOf(row));
  return {
    kind: "assigned",
    columns,
    cost: columns.reduce((sum, column, row) => sum + (costs[row]?.[column] ?? 0), 0),
  };
}

type Stand = {
  readonly row: number;
  readonly rowPrices: number[];
  readonly columnPrices: number[];
  readonly rowOf: readonly (number | undefined)[];
};

/** The cheapest alternating path from a row to a free column, prices kept so that no pair is cheaper than its prices. */
function growTree(costs: readonly (readonly number[])[], { row, rowPrices, columnPrices, rowOf }: Stand) {
  const slack = columnPrices.map(() => Number.POSITIVE_INFINITY);
  const before = new Map<number, number>();
  const reached = new Set<number>();
  let last: number | null = null;
  for (let at = row; ; ) {
    let next = -1;
    columnPrices.forEach((price, column) => {
      if (reached.has(column)) return;
      const rest = (costs[at]?.[column] ?? 0) - (rowPrices[at] ?? 0) - price;
      if (rest < (slack[column] ?? 0)) {
        slack[column] = rest;
        if (last === null) before.delete(column);
        else before.set(column, last);
      }
      if ((slack[column] ?? 0) < (slack[next] ?? Number.POSITIVE_INFINITY)) next = column;
    });
    if (next === -1) return { end: null, before, reached };
    const rise = slack[next] ?? 0;
    rowPrices[row] = (rowPrices[row] ?? 0) + rise;
    for (const column of reached) {
      columnPrices[column] = (columnPrices[column] ?? 0) - rise;
      const holder = rowOf[column];
      if (holder !== undefined) rowPrices[holder] = (rowPrices[holder] ?? 0) + rise;
    }
    slack.forEach((value, column) => {
      if (!reached.has(column)) slack[column] = value - rise;
    });
    const holder = rowOf[next];
    if (holder === undefined) return { end: next, before, reached };
    reached.add(next);
    last = next;
    at = holder;
  }
}

function requireRow(row: readonly number[], columnCount: number): void {
  if (row.length !== columnCount) throw new RangeError("every row of costs must have as many columns");
  const odd = row.find((cost) => !(cost > Number.NEGATIVE_INFINITY));
  if (odd !== undefined) throw new RangeError(`a cost must be a number or infinity, not ${odd}`);
}
