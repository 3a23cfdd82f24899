/** Things done one after another in the order they were asked for. */
export type Turns = { readonly take: (act: () => Promise<void> | undefined | void) => void };

/** Turns of which none is taken: a click made while an edit is under way waits for it, and for the pole it goes on from. */
export function openTurns(): Turns {
  let last: Promise<void> = Promise.resolve();
  return {
    take(act) {
      last = last.then(act).catch((error: unknown) => reportError(error));
    },
  };
}
