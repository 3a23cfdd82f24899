import { pictureHead } from "../../core/exchange/pictureHead.ts";
import { settingsOf } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { photoGroups } from "../../core/sheets/asBuilt/photoOrder.ts";
import type { PictureOf } from "../../core/sheets/asBuilt/photoSheet.ts";
import { usualKinds } from "../../core/sheets/composeSet.ts";
import type { ReadDb } from "../../db/driver.ts";
import { keptFile } from "../../db/keptFiles.ts";
import type { SetWanted } from "./drawnState.ts";
import { canBePainted, dataAddress, openPainter } from "./painter.ts";

/** Bytes of photos by their hash; null for one that is kept and is over the limit. */
export type KeptPhotos = ReadonlyMap<string, Uint8Array | null>;

/** Most bytes of photos together: those of a file are written once, those of a preview all stand in the window's memory. */
export const mostPhotoBytes = { file: 200_000_000, preview: 24_000_000 } as const;

/** A set wanted with the photos its sheets may show, along the route until they come to the limit; none where it has no report. */
export function withPhotos(db: ReadDb, wanted: SetWanted, mostBytes: number): SetWanted {
  if (!showsPhotos(wanted)) return wanted;
  const photos = new Map<string, Uint8Array | null>();
  let byteCount = 0;
  for (const { keptHash } of photoGroups(openPlant(wanted.route)).flat()) {
    if (photos.has(keptHash)) continue;
    const bytes = keptFile(db, keptHash);
    if (!bytes) continue;
    const fits = byteCount + bytes.byteLength <= mostBytes;
    photos.set(keptHash, fits ? bytes : null);
    if (fits) byteCount += bytes.byteLength;
  }
  return { ...wanted, photos };
}

function showsPhotos({ route, isAsBuilt = false, only, kinds }: SetWanted): boolean {
  const drawn = kinds ?? usualKinds(settingsOf(route), isAsBuilt);
  const isAsked = only === null || only.some((one) => one.startsWith("report") || /^\d+$/.test(one));
  return route.photo.size > 0 && drawn.includes("report") && isAsked;
}

/** Most points of a picture; painting takes four bytes each. */
const mostPoints = 50_000_000;

/** Looks at each photo when its sheet is drawn: a JPEG must be whole, any other must show something when it is painted. */
export async function pictureOpener(photos: KeptPhotos): Promise<PictureOf> {
  if (photos.size === 0) return () => "not kept";
  const painter = await openPainter();
  return (keptHash) => {
    const bytes = photos.get(keptHash);
    if (!bytes) return bytes === null ? "over the limit" : "not kept";
    const head = pictureHead(bytes);
    if (!head || head.widthPx * head.heightPx > mostPoints) return "unreadable";
    const { kind, widthPx, heightPx, goesIntoPdf } = head;
    const picture = { href: dataAddress(`image/${kind}`, bytes), widthPx, heightPx };
    // painting each of hundreds of photos only to try them would take longer than the drawing
    return goesIntoPdf || canBePainted(painter, picture) ? picture : "unreadable";
  };
}
