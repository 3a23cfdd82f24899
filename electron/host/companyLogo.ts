import { createHash } from "node:crypto";
import { notAPicture, readPicture } from "../../core/exchange/readPicture.ts";
import { type LogoRef, logoRefOf } from "../../core/model/logoRef.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { type Route, settingsOf } from "../../core/model/route.ts";
import type { Picture } from "../../core/sheets/paper/picture.ts";
import type { ReadDb } from "../../db/driver.ts";
import { keptFile } from "../../db/keptFiles.ts";
import { canBePainted, dataAddress, openPainter } from "./painter.ts";

/**
 * A picture file held against what drawings can show: it is read, and painted once.
 *
 * Faults: those of readPicture; not-a-picture where nothing of it can be painted.
 */
export async function readLogo(fileName: string, bytes: Uint8Array): Promise<Result<LogoRef>> {
  const picture = readPicture(fileName, bytes);
  if (!picture.ok) return picture;
  const ref = { ...picture.value, hash: createHash("sha256").update(bytes).digest("hex") };
  return canBePainted(await openPainter(), logoOf(ref, bytes)) ? ok(ref) : notAPicture(fileName);
}

/** The logo of a state of the route, out of the bytes its file keeps; null where it has none. */
export function keptLogo(db: ReadDb, route: Route): Picture | null {
  const ref = logoRefOf(settingsOf(route).logo);
  const bytes = ref && keptFile(db, ref.hash);
  return ref && bytes && logoOf(ref, bytes);
}

const mediaTypes = { png: "image/png", jpeg: "image/jpeg", svg: "image/svg+xml" } as const;

function logoOf({ kind, widthPx, heightPx }: LogoRef, bytes: Uint8Array): Picture {
  return { href: dataAddress(mediaTypes[kind], bytes), widthPx, heightPx };
}
