import { z } from "zod";
import { paperNames } from "../model/paperNames.ts";
import { closeoutMethods } from "./closeoutMethods.ts";
import { exportMethods } from "./exportMethods.ts";
import { fileEvents, fileMethods } from "./fileMethods.ts";
import { historyMethods } from "./historyMethods.ts";
import { layoutMethods } from "./layoutMethods.ts";
import { machineMethods } from "./machineMethods.ts";
import { revisionMethods } from "./revisionMethods.ts";
import { settingsMethods } from "./settingsMethods.ts";
import {
  editReply,
  faultSchema,
  findingSchema,
  historyState,
  importReplySchema,
  importRequestSchema,
  listedSheet,
  sheetPicture,
} from "./shapes.ts";
import { wayMethods } from "./wayMethods.ts";

const routeId = z.string().min(1);
/** What a set is drawn on; left out, the usual paper of the route's units. */
const paperName = z.enum(paperNames);
/** The revision to draw as it was issued; without it the route as it stands. */
const revisionDrawn = z.string().optional();
/** Numbers, kinds or keys of the sheets wanted; without it the whole set. */
const sheetsWanted = z.array(z.string()).min(1).readonly().optional();
/** A set or some of its sheets. */
const drawRequest = z.strictObject({
  routeId,
  jobId: z.string(),
  revisionId: revisionDrawn,
  sheets: sheetsWanted,
  paper: paperName.optional(),
});
const routeRequest = z.strictObject({ routeId });

/**
 * Everything the host can be asked, by name: what is sent and what comes back. The desktop bridge, the loopback server and
 * the batch verbs all speak it; the host's one door parses every request and reply.
 */
export const contract = {
  "route.list": {
    request: z.strictObject({}),
    reply: z.strictObject({
      routes: z.array(z.strictObject({ routeId, fileName: z.string(), routeName: z.string() })),
    }),
  },
  "route.read": {
    request: routeRequest,
    reply: z.strictObject({
      fileName: z.string(),
      tables: z.record(
        z.string(),
        z.array(z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()]))),
      ),
      findings: z.array(findingSchema).readonly(),
      history: historyState,
    }),
  },
  "edit.run": {
    request: z.strictObject({
      routeId,
      commandId: z.string(),
      input: z.unknown(),
      /** Edits of one gesture, such as a held arrow key, that follow each other are one step of undo. */
      gestureId: z.string().min(1).optional(),
    }),
    reply: editReply,
  },
  "edit.undo": { request: routeRequest, reply: editReply },
  "edit.redo": { request: routeRequest, reply: editReply },
  "import.plan": { request: importRequestSchema, reply: importReplySchema },
  "import.take": { request: importRequestSchema, reply: importReplySchema },
  "draw.sheets": {
    request: drawRequest,
    reply: z.strictObject({
      /** What the sheets are asked for by. */
      drawnId: z.string(),
      /** What the title blocks say of the revision. */
      revision: z.string(),
      sheets: z.array(listedSheet).readonly(),
    }),
  },
  /** One of the sheets drawn. */
  "draw.sheet": {
    request: z.strictObject({ routeId, drawnId: z.string(), number: z.string() }),
    reply: sheetPicture,
  },
  "draw.pdf": {
    request: drawRequest,
    reply: z.strictObject({ fileName: z.string(), pdfBase64: z.string() }),
  },
  /** Sheets as PNG: one as a picture, several as an archive of them. */
  "draw.pictures": {
    request: drawRequest,
    reply: z.strictObject({ fileName: z.string(), contentBase64: z.string() }),
  },
  ...layoutMethods,
  ...fileMethods,
  ...exportMethods,
  ...historyMethods,
  ...revisionMethods,
  ...settingsMethods,
  ...wayMethods,
  ...machineMethods,
  ...closeoutMethods,
  "job.cancel": { request: z.strictObject({ jobId: z.string() }), reply: z.strictObject({ cancelled: z.boolean() }) },
} as const;

type Contract = typeof contract;
export type Method = keyof Contract;
export type Request<M extends Method> = z.infer<Contract[M]["request"]>;
export type Reply<M extends Method> = z.infer<Contract[M]["reply"]>;
export type EditReply = z.infer<typeof editReply>;
export type HistoryState = z.infer<typeof historyState>;

/** What the host says without being asked. */
export const hostEvent = z.discriminatedUnion("kind", [
  ...fileEvents,
  z.strictObject({ kind: z.literal("edited"), routeId, edit: editReply }),
  z.strictObject({
    kind: z.literal("progress"),
    jobId: z.string(),
    doneCount: z.number(),
    totalCount: z.number(),
    words: z.string(),
  }),
]);
export type HostEvent = z.infer<typeof hostEvent>;

/** How every call is answered, whatever the transport: nothing crosses as an exception. */
export const answerSchema = z.discriminatedUnion("ok", [
  z.strictObject({ ok: z.literal(true), value: z.unknown() }),
  z.strictObject({ ok: z.literal(false), fault: faultSchema }),
]);
