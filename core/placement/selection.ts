/**
 * The value that would stand at a place if the first `count` values were in growing order; they are left in another order.
 *
 * Work grows with the count, where sorting would ask more.
 *
 * @param place  from 0 to `count` - 1
 * @source quickselect, Hoare 1961; the pivot is the middle one of three
 */
export function valueAtPlace(values: Float64Array, count: number, place: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const pivot = middleOf(values[low], values[(low + high) >> 1], values[high]);
    let up = low;
    let down = high;
    while (up <= down) {
      while (values[up] < pivot) up += 1;
      while (values[down] > pivot) down -= 1;
      if (up > down) break;
      const held = values[up];
      values[up] = values[down];
      values[down] = held;
      up += 1;
      down -= 1;
    }
    if (place <= down) high = down;
    else if (place >= up) low = up;
    else return pivot;
  }
  return values[place];
}

function middleOf(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
