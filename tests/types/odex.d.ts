/** The part of odex that the tests use; its own source does not pass our compiler settings. */
export class Solver {
  constructor(dimension: number);
  relativeTolerance: number;
  absoluteTolerance: number;
  solve(
    derivative: (x: number, y: readonly number[]) => number[],
    fromX: number,
    fromY: readonly number[],
    toX: number,
  ): { readonly y: number[]; readonly outcome: number };
}
