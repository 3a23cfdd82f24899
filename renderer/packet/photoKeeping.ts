import type { BroughtPhoto } from "../../core/closeout/packet/packetFile.ts";

/** A photo as the page keeps it. */
export type PagePhoto = {
  readonly id: string;
  readonly terminalId: string;
  readonly moment: BroughtPhoto["moment"];
  readonly caption: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly by: string;
  readonly atIso: string;
  readonly bytes: Blob;
};

/** Photos of a packet: in the browser's database where it lets us, else while the page is open. */
export type PhotoKeeping = {
  readonly isLasting: boolean;
  readonly all: () => readonly PagePhoto[];
  /** @returns false where the browser did not take it; it is held while the page is open all the same */
  readonly put: (photo: PagePhoto) => Promise<boolean>;
  readonly remove: (id: string) => Promise<void>;
};

const storeName = "photos";

/** Opens the photos kept of a packet. */
export async function openPhotoKeeping(packetId: string): Promise<PhotoKeeping> {
  const base = await openBase(`strandwright packet ${packetId}`);
  const kept = base ? await done(inStore(base, "readonly").getAll()) : null;
  const held = new Map((kept ?? []).filter(isPhoto).map((one) => [one.id, one]));
  return {
    isLasting: base !== null,
    all: () => [...held.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    async put(photo) {
      held.set(photo.id, photo);
      if (base === null) return false;
      return (await done(inStore(base, "readwrite").put(photo))) !== null;
    },
    async remove(id) {
      held.delete(id);
      if (base) await done(inStore(base, "readwrite").delete(id));
    },
  };
}

function inStore(base: IDBDatabase, mode: IDBTransactionMode): IDBObjectStore {
  return base.transaction(storeName, mode).objectStore(storeName);
}

async function openBase(name: string): Promise<IDBDatabase | null> {
  try {
    const asked = indexedDB.open(name, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(storeName, { keyPath: "id" });
    return await done(asked);
  } catch {
    return null;
  }
}

/** What a request came to; null where the browser refused it. */
function done<T>(request: IDBRequest<T>): Promise<T | null> {
  return new Promise((resolve) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => resolve(null);
  });
}

function isPhoto(value: unknown): value is PagePhoto {
  return typeof value === "object" && value !== null && "id" in value && "bytes" in value;
}
