import { z } from "zod";
import { mark } from "../model/fields.ts";
import { editReply } from "./shapes.ts";

/** How the panels stand on this machine. */
export const layoutSchema = z.strictObject({
  sideWidthPx: z.number(),
  findingsHeightPx: z.number(),
  isSideOpen: z.boolean(),
  isFindingsOpen: z.boolean(),
  /** Part of the main area the tables take. */
  tablesFrac: z.number(),
  areTablesBeside: z.boolean(),
  /** Part of the main area the profile takes; a layout kept before there was one goes without. */
  profileFrac: z.number().default(0.55),
  /** Part of the main area the balance takes; a layout kept before there was one goes without. */
  balanceFrac: z.number().default(0.65),
  /** The same of the traces and of the closeout. */
  tracesFrac: z.number().default(0.5),
  closeoutFrac: z.number().default(0.6),
});
export type PanelLayout = z.infer<typeof layoutSchema>;

const routeId = z.string().min(1);

/** Where a company standard comes from as the program brings it, and its value then; a route may hold another. */
const standardBasis = z.strictObject({
  document: z.string(),
  clause: z.string(),
  edition: z.string(),
  mark,
  value: z.union([z.string(), z.number(), z.null()]),
});

/** What the host is asked about standards and catalogues. */
export const settingsMethods = {
  /** Basis of each company standard by its column. */
  "catalogue.basis": {
    request: z.strictObject({}),
    reply: z.strictObject({ standards: z.record(z.string(), standardBasis) }),
  },
  /** The route's standards and catalogues as the text of a file. */
  "template.export": {
    request: z.strictObject({ routeId }),
    reply: z.strictObject({ fileName: z.string(), text: z.string() }),
  },
  /** Takes the text of a template file as one edit. */
  "template.import": {
    request: z.strictObject({ routeId, fileName: z.string(), text: z.string() }),
    reply: z.strictObject({ edit: editReply, newCount: z.number(), changedCount: z.number() }),
  },
  /** Takes a picture a person chose as the company's logo, as one edit. */
  "logo.take": {
    request: z.strictObject({ routeId, fileName: z.string(), contentBase64: z.string() }),
    reply: editReply,
  },
  /** The company's logo as a data address; null where it has none. */
  "logo.read": {
    request: z.strictObject({ routeId }),
    reply: z.strictObject({ href: z.string().nullable() }),
  },
  /** The layout kept on this machine; null before one was. Sent along, it is kept from now on. */
  "panels.layout": {
    request: z.strictObject({ keep: layoutSchema.optional() }),
    reply: z.strictObject({ layout: layoutSchema.nullable() }),
  },
} as const;
