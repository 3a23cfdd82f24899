/** What a person typed into one field, as typed. */
export type Typed = { readonly text: string; readonly by: string; readonly atIso: string };

/** Small things the page keeps by name: in the browser where it lets us, else while the page is open. */
export type Keeping = {
  /** False where nothing outlives the page. */
  readonly isLasting: boolean;
  readonly read: (name: string) => string | null;
  /** @returns false where the browser had no room; it is held while the page is open all the same */
  readonly write: (name: string, value: string) => boolean;
  readonly names: () => readonly string[];
};

/** Keeps under a packet's own name, so that several packets in one browser do not meet. */
export function openKeeping(packetId: string): Keeping {
  const prefix = `strandwright packet ${packetId} `;
  const held = new Map<string, string>();
  const storage = lastingStorage();
  return {
    isLasting: storage !== null,
    read: (name) => held.get(name) ?? storage?.getItem(prefix + name) ?? null,
    write(name, value) {
      held.set(name, value);
      try {
        storage?.setItem(prefix + name, value);
        return true;
      } catch {
        return false;
      }
    },
    names() {
      const kept = storage ? Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? "") : [];
      const own = kept.filter((one) => one.startsWith(prefix)).map((one) => one.slice(prefix.length));
      return [...new Set([...own, ...held.keys()])];
    },
  };
}

/** The browser's storage where it takes and gives; null where it refuses. */
function lastingStorage(): Storage | null {
  try {
    const trial = "strandwright trial";
    localStorage.setItem(trial, trial);
    const isLasting = localStorage.getItem(trial) === trial;
    localStorage.removeItem(trial);
    return isLasting ? localStorage : null;
  } catch {
    return null;
  }
}

/** Asks the browser not to clear what is kept when it wants room; it may refuse. */
export async function askToLast(): Promise<void> {
  try {
    await navigator.storage.persist();
  } catch {
    // pages opened from a file are not always let ask
  }
}
