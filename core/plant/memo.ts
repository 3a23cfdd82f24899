/**
 * Name of a cell: what kind of thing it is, and which one. Kept apart so that nothing is joined and hashed at every
 * read.
 */
export type CellName = readonly [space: string, key: string];

/**
 * Derived figures that remember what they read, so that one edit stales only what leaned on it.
 *
 * A cell is either an input (a row, an index bucket) that is told when it changes, or a computed value. While a value
 * is computed every cell it reads is noted; when an input changes, the note is followed upwards and whatever leaned
 * on it is dropped. A steady cell stops that: it is computed again at once, and only if its value is another one are
 * its readers dropped. Work after an edit therefore grows with what the edit touches, never with the route.
 */
export type Memo = {
  /**
   * The value of a computed cell; computes it when it is missing or stale.
   *
   * @param steady  true for a plain value (number, text, yes or no) that often stays the same when what it reads
   * changes
   */
  readonly get: <T>(space: string, key: string, compute: () => T, steady?: boolean) => T;
  /** Notes that whatever is being computed now leans on this input. */
  readonly touch: (space: string, key: string) => void;
  /** Drops everything that leaned on these inputs; answers with the names of the computed cells dropped. */
  readonly stale: (inputs: Iterable<CellName>) => CellName[];
};

type Cell = {
  readonly name: CellName;
  value: unknown;
  fresh: boolean;
  /** Most cells have none, and a set for each would be half the memory of a long route. */
  readers: Set<Cell> | null;
  reads: readonly Cell[];
  /** Set on a steady cell: how to compute it again. */
  again: (() => unknown) | null;
  /** Number of the computation that noted this cell last, so that it is not noted twice in a row. */
  notedBy: number;
};

type Computation = { readonly number: number; readonly of: Cell; readonly reads: Cell[] };

/** Steady cells that may have changed, with their values as they were before the edit. */
type Doubtful = Map<Cell, unknown>;

const noReads: readonly Cell[] = [];

/** An empty memo. */
export function openMemo(): Memo {
  const spaces = new Map<string, Map<string, Cell>>();
  const computing: Computation[] = [];
  let computedCount = 0;

  const cellOf = (space: string, key: string): Cell => {
    let cells = spaces.get(space);
    if (!cells) {
      cells = new Map();
      spaces.set(space, cells);
    }
    let cell = cells.get(key);
    if (!cell) {
      cell = {
        name: [space, key],
        value: undefined,
        fresh: false,
        readers: null,
        reads: noReads,
        again: null,
        notedBy: 0,
      };
      cells.set(key, cell);
    }
    return cell;
  };
  const forget = ({ name: [space, key] }: Cell): void => {
    spaces.get(space)?.delete(key);
  };
  const note = (cell: Cell): void => {
    const reader = computing.at(-1);
    if (!reader || cell.notedBy === reader.number) return;
    cell.notedBy = reader.number;
    reader.reads.push(cell);
  };
  const compute = <T>(cell: Cell, work: () => T, steady: boolean): T => {
    if (computing.some((one) => one.of === cell)) throw new Error(`the figure ${cell.name.join(" ")} leans on itself`);
    computedCount += 1;
    const computation: Computation = { number: computedCount, of: cell, reads: [] };
    computing.push(computation);
    try {
      const value = work();
      cell.value = value;
      cell.fresh = true;
      cell.again = steady ? work : null;
      cell.reads = computation.reads;
      for (const read of cell.reads) {
        read.readers ??= new Set();
        read.readers.add(cell);
      }
      return value;
    } finally {
      computing.pop();
    }
  };
  const get = <T>(space: string, key: string, work: () => T, steady = false): T => {
    const cell = cellOf(space, key);
    note(cell);
    if (cell.fresh) return cell.value as T; // the space names the query, and a query has one type
    return compute(cell, work, steady);
  };
  const drop = (first: Cell, dropped: CellName[], doubtful: Doubtful): void => {
    const pending = [first];
    for (let next = pending.pop(); next; next = pending.pop()) {
      const readers = next.readers ?? noReads;
      next.readers = null;
      for (const reader of readers) {
        reader.fresh = false;
        for (const read of reader.reads) read.readers?.delete(reader);
        reader.reads = noReads;
        if (reader.again !== null) {
          if (!doubtful.has(reader)) doubtful.set(reader, reader.value);
          continue;
        }
        reader.value = undefined;
        dropped.push(reader.name);
        pending.push(reader);
      }
      if (!next.fresh) forget(next);
    }
  };
  const isAnother = (cell: Cell, before: unknown): boolean => {
    if (!cell.again) return true;
    try {
      return !Object.is(cell.fresh ? cell.value : compute(cell, cell.again, true), before);
    } catch {
      return true; // what it was about is gone: whoever read it meets the same error, or no longer asks
    }
  };

  return {
    touch: (space, key) => {
      if (computing.length > 0) note(cellOf(space, key));
    },
    get,
    stale(inputs) {
      const dropped: CellName[] = [];
      const doubtful: Doubtful = new Map();
      for (const [space, key] of inputs) {
        const cell = spaces.get(space)?.get(key);
        if (cell) drop(cell, dropped, doubtful);
      }
      for (const [cell, before] of doubtful) {
        doubtful.delete(cell);
        if (!cell.readers?.size && !cell.fresh) forget(cell);
        else if (isAnother(cell, before)) drop(cell, dropped, doubtful);
      }
      return dropped;
    },
  };
}
