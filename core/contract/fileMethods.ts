import { z } from "zod";
import { importKind } from "../exchange/importOptions.ts";
import { faultSchema } from "./shapes.ts";

const routeId = z.string().min(1);
/** A place on the disk as the host named it in a listing; the page never sends a path. */
const entryId = z.string().min(1);
const named = z.strictObject({ entryId, name: z.string() });
const choice = z.strictObject({ id: z.string(), name: z.string() });
const opened = z.strictObject({ routeId });

const recentRoute = z.strictObject({
  recentId: z.string(),
  fileName: z.string(),
  folder: z.string(),
  routeName: z.string(),
  place: z.string(),
  openedAtIso: z.string(),
  /** The file is not where it was. */
  isMissing: z.boolean(),
});

const backup = z.strictObject({ backupId: z.string(), atIso: z.string(), byteCount: z.number() });

const columns = z.record(z.string(), z.string());

/** Everything about route files: which there are, opening and closing them, their copies. */
export const fileMethods = {
  "files.start": {
    request: z.strictObject({}),
    reply: z.strictObject({
      recent: z.array(recentRoute).readonly(),
      clearanceSets: z.array(choice).readonly(),
      loadingDistricts: z.array(choice).readonly(),
      /** Whether nobody has been shown round, or skipped it, on this machine. */
      isGuideDue: z.boolean(),
    }),
  },
  "files.browse": {
    /** Null lists the home folder. */
    request: z.strictObject({ folderId: entryId.nullable() }),
    reply: z.strictObject({
      folder: named,
      parentId: entryId.nullable(),
      /** The home folder and the drives. */
      roots: z.array(named).readonly(),
      folders: z.array(named).readonly(),
      routeFiles: z
        .array(z.strictObject({ entryId, name: z.string(), byteCount: z.number(), modifiedAtIso: z.string() }))
        .readonly(),
    }),
  },
  "files.open": { request: z.strictObject({ entryId }), reply: opened },
  "files.openRecent": { request: z.strictObject({ recentId: z.string() }), reply: opened },
  "files.openDemo": { request: z.strictObject({}), reply: opened },
  /** Opens a route file whose bytes a browser handed over without its place. */
  "files.openDropped": {
    request: z.strictObject({ fileName: z.string(), contentBase64: z.string() }),
    reply: z.strictObject({
      routeId,
      /** Folder the bytes were written to as a new file; null where the dropped file itself is open. */
      copyFolder: z.string().nullable(),
    }),
  },
  "files.create": {
    request: z.strictObject({
      folderId: entryId,
      fileName: z.string(),
      routeName: z.string().min(1),
      place: z.string(),
      unitSystem: z.enum(["us", "metric"]),
      /** Left out, those of the template, or of the program. */
      clearanceSetId: z.string().optional(),
      loadingDistrictId: z.string().optional(),
      /** Standards, catalogues and logo it starts with. */
      template: z.strictObject({ fileName: z.string(), text: z.string() }).optional(),
    }),
    reply: opened,
  },
  "files.close": { request: z.strictObject({ routeId }), reply: z.strictObject({}) },
  "files.state": {
    request: z.strictObject({ routeId }),
    reply: z.strictObject({
      folder: z.string(),
      /** When the newest edit was written; null where there was none yet. */
      editedAtIso: z.string().nullable(),
      /** Why the route may be looked at only; null where it may be edited. */
      lookOnly: faultSchema.nullable(),
    }),
  },
  "files.lookAgain": { request: z.strictObject({ routeId }), reply: z.strictObject({ isEditable: z.boolean() }) },
  "files.saveCopy": {
    request: z.strictObject({ routeId, folderId: entryId, fileName: z.string() }),
    reply: z.strictObject({ folder: z.string(), fileName: z.string() }),
  },
  "files.backups": {
    request: z.strictObject({ routeId }),
    reply: z.strictObject({ backups: z.array(backup).readonly() }),
  },
  "files.backUp": { request: z.strictObject({ routeId }), reply: backup },
  "files.restore": { request: z.strictObject({ routeId, backupId: z.string() }), reply: z.strictObject({}) },
  "files.columns": {
    request: z.strictObject({ kind: importKind, headings: z.array(z.string()).readonly() }),
    /** How a list with these headings was matched last time; empty where none was. */
    reply: z.strictObject({ columns }),
  },
  "files.keepColumns": {
    request: z.strictObject({ kind: importKind, headings: z.array(z.string()).readonly(), columns }),
    reply: z.strictObject({}),
  },
  "files.guideSeen": { request: z.strictObject({}), reply: z.strictObject({}) },
} as const;

/** What the host says unasked about files: which routes are open has changed, one was replaced under its id, a copy failed. */
export const fileEvents = [
  z.strictObject({ kind: z.literal("routes") }),
  z.strictObject({ kind: z.literal("replaced"), routeId }),
  z.strictObject({ kind: z.literal("trouble"), fault: faultSchema }),
] as const;
