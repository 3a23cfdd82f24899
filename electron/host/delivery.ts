import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { pictureKind } from "../../core/closeout/packet/pictureKind.ts";
import { writeRouteDxf } from "../../core/dxf/writeRouteDxf.ts";
import { writeGeojson } from "../../core/exchange/writeGeojson.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { saveCopyAs } from "../../db/backup.ts";
import { keptFile } from "../../db/keptFiles.ts";
import { saveCopyLookedInto } from "../../db/lookInto.ts";
import { type Progress, partOf } from "./drawingProgress.ts";
import { asBuiltState, drawnState } from "./drawnState.ts";
import type { RunJob } from "./jobs.ts";
import { mostPhotoBytes, withPhotos } from "./keptPhotos.ts";
import { proofOf } from "./proof.ts";
import { routeWorkbook } from "./routeSchedules.ts";
import type { Session } from "./session.ts";
import type { NamedBytes } from "./zipped.ts";

type Watch = { readonly onProgress: (progress: Progress) => void; readonly signal: AbortSignal };

/**
 * All that is handed over of a closed-out route: the set as built with redlines, the closeout report, its tables as a workbook, the route as
 * built as DXF and GeoJSON, traces and photos, the route file, and a manifest with the SHA-256 of each. The same file gives the same bytes.
 *
 * Faults: those of the writers, and damaged.
 */
export async function deliveryOf(
  session: Session,
  runJob: RunJob,
  watch: Watch,
): Promise<Result<readonly NamedBytes[]>> {
  const name = basename(session.fileName, ".strand");
  const asDesigned = drawnState(session, null);
  if (!asDesigned.ok) return asDesigned;
  const built = asBuiltState(session);
  const dxf = writeRouteDxf(built.route);
  if (!dxf.ok) return dxf;
  const copy = routeCopy(session);
  if (!copy.ok) return copy;
  const geojson = writeGeojson(built.route);
  // a route on a grid of its own has no places on the globe; the manifest says so
  if (!geojson.ok && geojson.fault.code !== "no-origin") return geojson;
  const drawn = { only: null, paper: null };
  const partOfIt = (index: number, title: string) => partOf(watch.onProgress, index, 2, title);
  const set = await runJob("pdf", { ...built, ...drawn }, partOfIt(0, "set as built"), watch.signal);
  const kinds = ["report", "findings"] as const;
  // the report holds what was built against the design, so it is of the design's rows; it is a record and nothing to build from
  const held = { ...asDesigned.value, since: null, isAsBuilt: true, ...drawn, kinds };
  const asked = withPhotos(session.file.db, held, mostPhotoBytes.file);
  const report = await runJob("pdf", asked, partOfIt(1, "closeout report"), watch.signal);
  const files: readonly NamedBytes[] = [
    { name: `${name} as built.pdf`, content: set.pdf },
    ...(report.sheetCount > 0 ? [{ name: `${name} closeout report.pdf`, content: report.pdf }] : []),
    { name: `${name} tables.xlsx`, content: await routeWorkbook(session) },
    { name: `${name} as built.dxf`, content: bytesOf(dxf.value) },
    ...(geojson.ok ? [{ name: `${name} as built.geojson`, content: bytesOf(geojson.value) }] : []),
    ...keptFiles(session),
    { name: session.fileName, content: copy.value },
  ];
  return ok([
    ...files,
    { name: "manifest.json", content: manifest(session, files, geojson.ok ? [] : [geojson.fault.what]) },
  ]);
}

/** What is in the delivery, and what the route file's journal and signatures prove of it. */
function manifest(session: Session, files: readonly NamedBytes[], leftOut: readonly string[]): Uint8Array {
  const { entryCount, newestHash, signatures } = proofOf(session);
  const told = {
    route: session.plant.settings().routeName,
    journal: { entryCount, newestHash },
    signatures: signatures.map(({ stage, by, role, atIso, digest, reopenedBy }) => ({
      stage,
      by,
      role,
      atIso,
      digest,
      stands: reopenedBy === "",
    })),
    files: files.map((one) => ({ name: one.name, byteCount: one.content.byteLength, sha256: sha256(one.content) })),
    leftOut,
  };
  return bytesOf(`${JSON.stringify(told, null, 2)}\n`);
}

/** Traces under their own names, photos by what they show; two of one name are told apart by their hash. */
function keptFiles(session: Session): readonly NamedBytes[] {
  const { trace, photo } = session.route();
  const bytes = (hash: string) => keptFile(session.file.db, hash);
  const traces = [...trace.values()].flatMap(({ keptHash, fileName }) =>
    named("traces", fileName, keptHash, bytes(keptHash)),
  );
  const photos = [...photo.values()].flatMap(({ keptHash, kind, subjectId, moment }) => {
    const content = bytes(keptHash);
    const ending = content && pictureKind(content) === "png" ? "png" : "jpg";
    return named("photos", `${kind} ${subjectId} ${moment}.${ending}`, keptHash, content);
  });
  return [...traces, ...photos].sort((a, b) => (a.name < b.name ? -1 : 1));
}

function named(folder: string, fileName: string, hash: string, content: Uint8Array | null): readonly NamedBytes[] {
  if (!content) return [];
  const plain = fileName.replace(/[^\w .()-]/g, "_").replace(/^\.+/, "_");
  return [{ name: `${folder}/${hash.slice(0, 8)} ${plain}`, content }];
}

function routeCopy(session: Session): Result<Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), "strand-delivery-"));
  try {
    const save = session.lookOnly ? saveCopyLookedInto : saveCopyAs;
    const saved = save(session.file.db, join(folder, session.fileName));
    return saved.ok ? ok(new Uint8Array(readFileSync(saved.value))) : saved;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

function sha256(content: Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}
