import type { OpenRoute } from "./routeStore.ts";

/** The longest work in steps holds the page at a time, ms: keys and the hand wait no longer, and frames are kept. */
const sliceMs = 8;

/**
 * Works something out about a route step by step, between whatever else the page has to do. It ends with the next edit.
 *
 * @param steps  short steps of a few ms at most
 * @param onSlice  told after every slice, with what the work came to once it is done
 * @returns stops it
 */
export function inSlices<T>(
  { plant, route }: Pick<OpenRoute, "plant" | "route">,
  steps: Generator<void, T>,
  onSlice: (done: { readonly value: T } | null) => void,
): () => void {
  const next = (): void => {
    // an edit may have come in before anybody stops this
    if (plant.route() !== route) return;
    const untilMs = performance.now() + sliceMs;
    let step = steps.next();
    while (!step.done && performance.now() < untilMs) step = steps.next();
    if (!step.done) timer = setTimeout(next);
    onSlice(step.done ? { value: step.value } : null);
  };
  let timer = setTimeout(next);
  return () => clearTimeout(timer);
}
