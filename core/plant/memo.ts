/**
 * Derived figures that remember what they read, so that one edit stales only what leaned on it.
 *
 * A cell is either an input (a row, an index bucket) that is told when it changes, or a computed value. While a value is
 * computed every cell it reads is noted; when an input changes, the note is followed upwards and whatever leaned on it is
 * dropped. Work after an edit therefore grows with what the edit touches, never with the route.
 */
export type Memo = {
  /** The value of a computed cell; computes it when it is missing or stale. */
  readonly get: <T>(key: string, compute: () => T) => T;
  /** Notes that whatever is being computed now leans on this input. */
  readonly touch: (key: string) => void;
  /** Drops everything that leaned on these inputs; answers with the keys of the computed cells dropped. */
  readonly stale: (keys: Iterable<string>) => string[];
};

type Cell = { value: unknown; fresh: boolean; readers: Set<string>; reads: string[] };

/** An empty memo. */
export function openMemo(): Memo {
  const cells = new Map<string, Cell>();
  const computing: string[][] = [];
  const inProgress = new Set<string>();

  const cellOf = (key: string): Cell => {
    let cell = cells.get(key);
    if (!cell) {
      cell = { value: undefined, fresh: false, readers: new Set(), reads: [] };
      cells.set(key, cell);
    }
    return cell;
  };
  const touch = (key: string): void => {
    computing.at(-1)?.push(key);
  };
  const drop = (key: string, dropped: string[]): void => {
    const pending = [key];
    for (let next = pending.pop(); next !== undefined; next = pending.pop()) {
      const cell = cells.get(next);
      if (!cell) continue;
      const readers = [...cell.readers];
      cell.readers.clear();
      for (const reader of readers) {
        const leaning = cells.get(reader);
        if (!leaning?.fresh) continue;
        leaning.fresh = false;
        leaning.value = undefined;
        for (const read of leaning.reads) cells.get(read)?.readers.delete(reader);
        leaning.reads = [];
        dropped.push(reader);
        pending.push(reader);
      }
      if (!cell.fresh && cell.readers.size === 0) cells.delete(next);
    }
  };

  return {
    touch,
    get<T>(key: string, compute: () => T): T {
      touch(key);
      const present = cells.get(key);
      if (present?.fresh) return present.value as T; // the key names the query, and a query has one type
      if (inProgress.has(key)) throw new Error(`the figure ${key} leans on itself`);
      inProgress.add(key);
      computing.push([]);
      try {
        const value = compute();
        const cell = cellOf(key);
        cell.value = value;
        cell.fresh = true;
        cell.reads = [...new Set(computing.at(-1))];
        for (const read of cell.reads) cellOf(read).readers.add(key);
        return value;
      } finally {
        computing.pop();
        inProgress.delete(key);
      }
    },
    stale(keys) {
      const dropped: string[] = [];
      for (const key of keys) drop(key, dropped);
      return dropped;
    },
  };
}
