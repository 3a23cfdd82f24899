import { createHash } from "node:crypto";
import { notAPicture, readPicture } from "../../core/exchange/readPicture.ts";
import { type LogoRef, logoRefOf } from "../../core/model/logoRef.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { type Route, settingsOf } from "../../core/model/route.ts";
import type { Logo } from "../../core/sheets/logo.ts";
import type { ReadDb } from "../../db/driver.ts";
import { keptFile } from "../../db/keptFiles.ts";
import { openPainter, pictureSvg } from "./painter.ts";

/**
 * A picture file held against what drawings can show: it is read, and painted once.
 *
 * Faults: those of readPicture; not-a-picture where nothing of it can be painted.
 */
export async function readLogo(fileName: string, bytes: Uint8Array): Promise<Result<LogoRef>> {
  const picture = readPicture(fileName, bytes);
  if (!picture.ok) return picture;
  const ref = { ...picture.value, hash: createHash("sha256").update(bytes).digest("hex") };
  return (await canBePainted(logoOf(ref, bytes))) ? ok(ref) : notAPicture(fileName);
}

/** The logo of a state of the route, out of the bytes its file keeps; null where it has none. */
export function keptLogo(db: ReadDb, route: Route): Logo | null {
  const ref = logoRefOf(settingsOf(route).logo);
  const bytes = ref && keptFile(db, ref.hash);
  return ref && bytes && logoOf(ref, bytes);
}

const mediaTypes = { png: "image/png", jpeg: "image/jpeg", svg: "image/svg+xml" } as const;

function logoOf({ kind, widthPx, heightPx }: LogoRef, bytes: Uint8Array): Logo {
  return { href: `data:${mediaTypes[kind]};base64,${Buffer.from(bytes).toString("base64")}`, widthPx, heightPx };
}

const triedPx = 200;

async function canBePainted({ href, widthPx, heightPx }: Logo): Promise<boolean> {
  const painter = await openPainter();
  const frac = Math.min(1, triedPx / Math.max(widthPx, heightPx));
  const width = Math.max(1, Math.round(widthPx * frac));
  const svg = pictureSvg(href, width, Math.max(1, Math.round(heightPx * frac)));
  return painter.points(svg, width).rgba.some((one, at) => at % 4 === 3 && one > 0);
}
