import { valueAtPlace } from "./selection.ts";

/** States of one step of the strand program, packed; every state stands once, at its least value. */
export type Layer = {
  count: number;
  /** `wordCount` words a state */
  key: Int32Array;
  /** lower bound of any completion */
  value: Float64Array;
  /** state of the step before it came from, and which arc of the unit it took: 65535 for none */
  parent: Int32Array;
  choice: Uint16Array;
  /** room to find the least values in */
  scratch: Float64Array;
  readonly wordCount: number;
  /** Open addressing: a slot holds the number of a state plus one where `stamp` is of this round. */
  slot: Int32Array;
  stamp: Int32Array;
  round: number;
};

/** An empty layer. */
export function openLayer(wordCount: number): Layer {
  return {
    count: 0,
    key: new Int32Array(1024 * wordCount),
    value: new Float64Array(1024),
    parent: new Int32Array(1024),
    choice: new Uint16Array(1024),
    scratch: new Float64Array(1024),
    wordCount,
    slot: new Int32Array(4096),
    stamp: new Int32Array(4096),
    round: 0,
  };
}

/** Empties a layer. */
export function clearLayer(layer: Layer): void {
  layer.count = 0;
  layer.round += 1;
}

/** Takes in a state whose key stands in `word`; of two with the same loads the one of less value stays. */
export function putState(layer: Layer, word: Int32Array, value: number, parent: number, choice: number): void {
  if (layer.count === layer.value.length) grow(layer);
  const { key, slot, stamp, wordCount, round } = layer;
  const mask = slot.length - 1;
  for (let at = hashOf(word, 0, wordCount) & mask; ; at = (at + 1) & mask) {
    if (stamp[at] !== round) {
      const state = layer.count;
      for (let one = 0; one < wordCount; one += 1) key[state * wordCount + one] = word[one];
      layer.value[state] = value;
      layer.parent[state] = parent;
      layer.choice[state] = choice;
      stamp[at] = round;
      slot[at] = state;
      layer.count += 1;
      return;
    }
    const state = slot[at];
    let one = 0;
    while (one < wordCount && key[state * wordCount + one] === word[one]) one += 1;
    if (one < wordCount) continue;
    if (value < layer.value[state]) {
      layer.value[state] = value;
      layer.parent[state] = parent;
      layer.choice[state] = choice;
    }
    return;
  }
}

/**
 * Keeps the `width` states of least value.
 *
 * @returns the least value cut, infinite where all stay
 */
export function cutLayer(layer: Layer, width: number): number {
  if (layer.count <= width) return Number.POSITIVE_INFINITY;
  const { key, value, parent, choice, wordCount, scratch } = layer;
  for (let state = 0; state < layer.count; state += 1) scratch[state] = value[state];
  const limit = valueAtPlace(scratch, layer.count, width - 1);
  let atLimit = width;
  for (let state = 0; state < layer.count; state += 1) if (value[state] < limit) atLimit -= 1;
  let leastCut = Number.POSITIVE_INFINITY;
  let kept = 0;
  for (let state = 0; state < layer.count; state += 1) {
    if (value[state] > limit || (value[state] === limit && atLimit === 0)) {
      leastCut = Math.min(leastCut, value[state]);
      continue;
    }
    if (value[state] === limit) atLimit -= 1;
    for (let one = 0; one < wordCount; one += 1) key[kept * wordCount + one] = key[state * wordCount + one];
    value[kept] = value[state];
    parent[kept] = parent[state];
    choice[kept] = choice[state];
    kept += 1;
  }
  layer.count = kept;
  return leastCut;
}

function grow(layer: Layer): void {
  const room = 2 * layer.value.length;
  layer.key = enlarged(layer.key, new Int32Array(room * layer.wordCount));
  layer.value = enlarged(layer.value, new Float64Array(room));
  layer.parent = enlarged(layer.parent, new Int32Array(room));
  layer.choice = enlarged(layer.choice, new Uint16Array(room));
  layer.scratch = new Float64Array(room);
  layer.slot = new Int32Array(4 * room);
  layer.stamp = new Int32Array(4 * room);
  layer.round = 1;
  const mask = layer.slot.length - 1;
  for (let state = 0; state < layer.count; state += 1) {
    let at = hashOf(layer.key, state * layer.wordCount, layer.wordCount) & mask;
    while (layer.stamp[at] === layer.round) at = (at + 1) & mask;
    layer.stamp[at] = layer.round;
    layer.slot[at] = state;
  }
}

function enlarged<T extends Int32Array | Float64Array | Uint16Array>(from: T, into: T): T {
  into.set(from);
  return into;
}

function hashOf(key: Int32Array, from: number, wordCount: number): number {
  let hash = 0;
  for (let one = 0; one < wordCount; one += 1) {
    hash = Math.imul(hash ^ key[from + one], 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return hash;
}
