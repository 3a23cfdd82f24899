import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { type KeptPhotos, pictureOpener, withPhotos } from "../../../electron/host/keptPhotos.ts";
import { writePdf } from "../../../electron/host/writePdf.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { smallPng, tallJpeg, wideJpeg } from "../../fixtures/route/pictures.ts";
import { photoOf } from "../../fixtures/route/readingRow.ts";

const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const truncated = wideJpeg.slice(0, 40);

async function pdfOf(pictures: readonly Uint8Array[], photos: KeptPhotos): Promise<Buffer> {
  const rows = pictures.map((bytes, at) => ({ ...photoOf(`photo-${at}`), keptHash: hashOf(bytes) }));
  const plant = openPlant(withRows(smallRoute(), "photo", rows));
  return Buffer.from(
    await writePdf(composeSet(plant, [], { kinds: ["report"], pictureOf: await pictureOpener(photos) })),
  );
}

const countOf = (pdf: Buffer, words: string) => pdf.toString("latin1").split(words).length - 1;

test("each picture is in the PDF once, however often it is drawn, a JPEG byte for byte", async () => {
  const kept = new Map([wideJpeg, tallJpeg, smallPng].map((bytes) => [hashOf(bytes), bytes]));
  const pdf = await pdfOf([wideJpeg, tallJpeg, smallPng, wideJpeg], kept);
  expect(countOf(pdf, "/Filter /DCTDecode")).toBe(2);
  expect(countOf(pdf, "/SMask")).toBe(1);
  expect(pdf.indexOf(wideJpeg)).toBeGreaterThan(0);
  expect(pdf.indexOf(wideJpeg, pdf.indexOf(wideJpeg) + 1)).toBe(-1);
  expect(pdf.indexOf(tallJpeg)).toBeGreaterThan(0);
  expect(pdf.equals(await pdfOf([wideJpeg, tallJpeg, smallPng, wideJpeg], kept))).toBe(true);
});

test("what cannot be decoded, is over the limit or is not kept is no picture and no failure", async () => {
  const words = new Uint8Array([0xff, 0xd8, 0xff, 1, 2, 3]);
  const kept = new Map([
    [hashOf(truncated), truncated],
    [hashOf(words), words],
    [hashOf(tallJpeg), null],
  ]);
  const pictureOf = await pictureOpener(kept);
  expect([truncated, words, tallJpeg, wideJpeg].map((bytes) => pictureOf(hashOf(bytes)))).toEqual([
    "unreadable",
    "unreadable",
    "over the limit",
    "not kept",
  ]);
  expect(countOf(await pdfOf([truncated, words, tallJpeg, wideJpeg], kept), "/Subtype /Image")).toBe(0);
});

test("photos are read along the route up to the limit, and only where the report is drawn", () => {
  const files = new Map([wideJpeg, tallJpeg, smallPng].map((bytes) => [hashOf(bytes), bytes]));
  const photo = [...files.keys()].map((keptHash, at) => ({ ...photoOf(`photo-${at}`), keptHash }));
  const route = withRows(smallRoute(), "photo", photo);
  const db = { arrays: () => [], all: () => [], get: () => undefined };
  const readable = { ...db, bytes: (_sql: string, hash?: unknown) => files.get(String(hash)) ?? null };
  const wanted = { route, findings: [], revisionId: null, since: null, logo: null, only: null, paper: null };
  const most = wideJpeg.byteLength + smallPng.byteLength;
  expect([...(withPhotos(readable, wanted, most).photos?.values() ?? [])]).toEqual([wideJpeg, null, smallPng]);
  for (const other of [{ only: ["plan"] }, { isAsBuilt: true }, { kinds: ["bill"] as const }])
    expect(withPhotos(readable, { ...wanted, ...other }, most).photos).toBeUndefined();
});
