import { z } from "zod";
import { importChoices } from "../exchange/importOptions.ts";
import { lineWords } from "../exchange/table.ts";
import { tableNames } from "../model/tables.ts";
import { sheetKinds } from "../sheets/book.ts";

const cell = z.union([z.string(), z.number(), z.boolean(), z.null()]);
const flatRow = z.record(z.string(), cell);

const tableNameSchema = z.enum(tableNames);

export const faultSchema = z.strictObject({ code: z.string(), what: z.string(), where: z.string(), mend: z.string() });

/** One row before and after; the tables' own schemas check the rows where an edit is applied. */
export const rowChangeSchema = z.strictObject({
  table: tableNameSchema,
  id: z.string(),
  before: flatRow.nullable(),
  after: flatRow.nullable(),
});

const basis = z.strictObject({
  document: z.string(),
  clause: z.string(),
  edition: z.string(),
  mark: z.enum(["seen", "memory", "practice", "computed"]),
});

/** A finding as it crosses to the window. */
export const findingSchema = z.strictObject({
  key: z.string(),
  ruleId: z.string(),
  title: z.string(),
  severity: z.enum(["error", "warning", "note"]),
  subjects: z.array(z.strictObject({ table: tableNameSchema, id: z.string() })).readonly(),
  message: z.string(),
  measured: z.number().nullable(),
  limit: z.number().nullable(),
  unit: z.string(),
  basis,
  fixes: z.array(z.strictObject({ label: z.string(), command: z.string(), input: z.unknown() })).readonly(),
  at: z.strictObject({ eastM: z.number(), northM: z.number() }).nullable(),
  waiverId: z.string().nullable(),
});

/** What the window shows beside undo and redo. */
export const historyState = z.strictObject({ undo: z.string().nullable(), redo: z.string().nullable() });

/** An edit as it was carried out, and what it did to the findings. */
export const editReply = z.strictObject({
  label: z.string(),
  rows: z.array(rowChangeSchema).readonly(),
  history: historyState,
  /** Keys of findings that are no longer there. */
  gone: z.array(z.string()).readonly(),
  /** Findings that are new or read differently now. */
  found: z.array(findingSchema).readonly(),
});

/** A sheet as the preview lists it. */
export const listedSheet = z.strictObject({
  number: z.string(),
  title: z.string(),
  kind: z.enum(sheetKinds),
  /** What it shows, by names that stay on every paper. */
  keys: z.array(z.string()).readonly(),
  /** What its title block says of the scale. */
  scale: z.string(),
  sizeMm: z.strictObject({ width: z.number(), height: z.number() }),
});

/** What stands on a sheet. */
export const sheetPicture = z.strictObject({
  svg: z.string(),
  /** Areas that lead to other sheets: left, bottom, width, height from the sheet's lower left corner, mm. */
  links: z
    .array(
      z.strictObject({ boxMm: z.tuple([z.number(), z.number(), z.number(), z.number()]).readonly(), to: z.string() }),
    )
    .readonly(),
});

/** A file a person chose, and how it is to be read. */
export const importRequestSchema = z.strictObject({
  routeId: z.string(),
  fileName: z.string(),
  /** The file's bytes: the page hands over what was chosen, never a path. */
  contentBase64: z.string(),
  choices: importChoices,
});

/** What an import would do, or did. */
export const importReplySchema = z.strictObject({
  /** What the lines of bad rows count. */
  lineWord: z.enum(lineWords),
  headings: z.array(z.string()).readonly(),
  /** Field to heading as the file is read. */
  columns: z.record(z.string(), z.string()),
  fields: z.array(z.strictObject({ field: z.string(), title: z.string(), required: z.boolean() })).readonly(),
  /** The first rows of the file, cells under its headings. */
  firstRows: z.array(z.array(z.string()).readonly()).readonly(),
  newCount: z.number(),
  changedCount: z.number(),
  skippedCount: z.number(),
  spanCount: z.number(),
  bad: z
    .array(
      z.strictObject({
        file: z.string(),
        line: z.number(),
        column: z.string(),
        value: z.string(),
        what: z.string(),
        accepted: z.string(),
      }),
    )
    .readonly(),
  notes: z.array(z.string()).readonly(),
  /** Spans a person should look at before trusting them. */
  spansForReview: z
    .array(
      z.strictObject({
        spanId: z.string(),
        fromTag: z.string(),
        toTag: z.string(),
        lengthM: z.number(),
        review: z.string(),
      }),
    )
    .readonly(),
  /** What keeps the whole file out: a column nobody matched, or bad rows; null where it can be taken. */
  problem: faultSchema.nullable(),
});

export type ImportRequest = z.infer<typeof importRequestSchema>;
export type ImportReply = z.infer<typeof importReplySchema>;
