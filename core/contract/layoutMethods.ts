import { z } from "zod";
import { layoutEnding, unservedKind } from "../model/layoutRows.ts";
import { editReply, rowChangeSchema } from "./shapes.ts";

const routeId = z.string().min(1);

/** What is to be otherwise in a trial layout. */
const variant = z.strictObject({
  sparePortCount: z.number().int().nonnegative().optional(),
  dropReachM: z.number().positive().optional(),
  dropCostPerM: z.number().nonnegative().optional(),
  modelCosts: z.record(z.string(), z.number().nonnegative()).optional(),
  modelIds: z.array(z.string()).min(1).readonly().optional(),
});

const figures = z.strictObject({
  terminalCount: z.number(),
  servedCount: z.number(),
  unitCount: z.number(),
  cost: z.number(),
  searched: z.strictObject({ cost: z.number(), bound: z.number() }).nullable(),
  dropM: z.number(),
  longestDropM: z.number(),
  fillFrac: z.tuple([z.number(), z.number()]).readonly().nullable(),
  strandFrac: z.number().nullable(),
  lightMarginDb: z.number().nullable(),
});

/** Whom the other layout leaves unserved, reason by reason. */
const leftOut = z.array(z.strictObject({ kind: unservedKind, reason: z.string(), count: z.number() })).readonly();

/** What the host is asked about layouts. */
export const layoutMethods = {
  "layout.run": {
    request: z.strictObject({
      routeId,
      jobId: z.string(),
      /** Seconds it may search; left out, as long as an ordinary route needs. */
      timeLimitS: z.number().positive().optional(),
    }),
    reply: z.strictObject({
      edit: editReply,
      unserved: z
        .array(
          z.strictObject({ livingUnitId: z.string(), kind: unservedKind, address: z.string(), reason: z.string() }),
        )
        .readonly(),
      /** Terminals and drops hung anew, at catalogue prices, and a proven lower bound; null where fibers ran short. */
      cost: z.number(),
      costBound: z.number().nullable(),
      ended: layoutEnding,
      /** Spans no line reaches from the pole the cable comes from. */
      unstrung: z.array(z.strictObject({ fromTag: z.string(), toTag: z.string() })).readonly(),
    }),
  },
  /** Lays the route out under other standards, prices or models, and changes nothing; the host keeps the trial until the next. */
  "layout.try": {
    request: z.strictObject({ routeId, jobId: z.string(), variant, timeLimitS: z.number().positive().optional() }),
    reply: z.strictObject({ trialId: z.string(), present: figures, other: figures, ended: layoutEnding, leftOut }),
  },
  /** The terminals and drops of the trial that differ from the route it was tried on, to be shown beside them. */
  "layout.trial": {
    request: z.strictObject({ routeId, trialId: z.string() }),
    reply: z.strictObject({ rows: z.array(rowChangeSchema).readonly() }),
  },
  /** Takes the trial, whole or along the poles from each chosen one to the next, as one edit. */
  "layout.take": {
    request: z.strictObject({
      routeId,
      trialId: z.string(),
      poleIds: z.array(z.string()).min(1).readonly().optional(),
    }),
    reply: editReply,
  },
} as const;
