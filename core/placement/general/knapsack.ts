/** The units a point could take at the present prices: worth and ports, `count` of each. */
export type Items = { count: number; readonly worth: Float64Array; readonly ports: Int32Array };

/** Room for the items of one point. */
export function roomForItems(most: number): Items {
  return { count: 0, worth: new Float64Array(most), ports: new Int32Array(most) };
}

/** The table of a knapsack: the greatest worth within each capacity, and which items make it up. */
export type Table = { worth: Float64Array; taken: Uint8Array; width: number };

/** A table with no room yet; it grows as it is filled. */
export function emptyTable(): Table {
  return { worth: new Float64Array(0), taken: new Uint8Array(0), width: 0 };
}

/**
 * Fills the table of the 0/1 knapsack for every capacity from 0 to `capacity`.
 *
 * @source Bellman's recursion, in O(items x capacity)
 */
export function fillTable(table: Table, items: Items, capacity: number): void {
  const width = capacity + 1;
  if (table.worth.length < width) table.worth = new Float64Array(width);
  if (table.taken.length < items.count * width) table.taken = new Uint8Array(2 * items.count * width);
  table.width = width;
  const { worth, taken } = table;
  worth.fill(0, 0, width);
  let held = 0;
  for (let item = 0; item < items.count; item += 1) {
    const ports = items.ports[item];
    const gain = items.worth[item];
    const row = item * width;
    // above what all items so far need, the table is level
    const level = Math.min(held, capacity);
    held += ports;
    const last = Math.min(held, capacity);
    for (let room = level + 1; room <= last; room += 1) worth[room] = worth[level];
    for (let room = last; room >= ports; room -= 1) {
      const withItem = worth[room - ports] + gain;
      if (withItem > worth[room]) {
        worth[room] = withItem;
        taken[row + room] = 1;
      } else taken[row + room] = 0;
    }
    taken.fill(taken[row + last], row + last + 1, row + width);
  }
  worth.fill(worth[Math.min(held, capacity)], Math.min(held, capacity) + 1, width);
}

/**
 * Reads from a filled table the items of the best filling within a capacity.
 *
 * @returns how many were written to `into`, from `start`
 */
export function readTable(table: Table, items: Items, capacity: number, into: Int32Array, start: number): number {
  let room = capacity;
  let count = 0;
  for (let item = items.count - 1; item >= 0; item -= 1) {
    const ports = items.ports[item];
    if (ports > room || table.taken[item * table.width + room] === 0) continue;
    into[start + count] = item;
    count += 1;
    room -= ports;
  }
  return count;
}
