import { z } from "zod";
import { sameRow } from "../edits/sameRow.ts";
import { rowEdit, strayReference } from "../edits/tableRow.ts";
import { catalogueNames } from "../model/catalogueNames.ts";
import { powerColumns } from "../model/catalogueRows.ts";
import { fail, ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { type TableName, tables } from "../model/tables.ts";

/** A company's standards without what belongs to one route: its name, place, units on screen and grid. */
const standards = tables.settings.omit({
  id: true,
  routeName: true,
  project: true,
  place: true,
  county: true,
  unitSystem: true,
  originLonDeg: true,
  originLatDeg: true,
  datum: true,
});

/** What templates written before these columns were there stand at. */
const standardsRead = standards.extend({
  strandAtPoles: standards.shape.strandAtPoles.default("clamped"),
  pieceAllowanceFrac: standards.shape.pieceAllowanceFrac.default(0),
  extremeWindId: standards.shape.extremeWindId.default(null),
  extremeIceId: standards.shape.extremeIceId.default(null),
  workerLoadN: standards.shape.workerLoadN.default(0),
  generalNotes: standards.shape.generalNotes.default(""),
  titleLine: standards.shape.titleLine.default(""),
  sheetsLeftOut: standards.shape.sheetsLeftOut.default(""),
  paper: standards.shape.paper.default("usual"),
  newLineMm: standards.shape.newLineMm.default("0.5"),
  existingLineMm: standards.shape.existingLineMm.default("0.35"),
  dimensionLineMm: standards.shape.dimensionLineMm.default("0.18"),
  markLineMm: standards.shape.markLineMm.default("0.35"),
  frameLineMm: standards.shape.frameLineMm.default("0.5"),
  layerNames: standards.shape.layerNames.default(""),
  logo: standards.shape.logo.default(""),
  offsetToleranceM: standards.shape.offsetToleranceM.default(0.0508),
  readingToleranceDb: standards.shape.readingToleranceDb.default(1.5),
  markToleranceFrac: standards.shape.markToleranceFrac.default(0.02),
  markToleranceM: standards.shape.markToleranceM.default(0.6096),
  groundMaxOhm: standards.shape.groundMaxOhm.default(25),
  spliceMaxDb: standards.shape.spliceMaxDb.default(0.2),
  connectionMaxDb: standards.shape.connectionMaxDb.default(0.5),
  reflectanceMaxDb: standards.shape.reflectanceMaxDb.default(-45),
  sectionMaxDbPerKm: standards.shape.sectionMaxDbPerKm.default(0.4),
  returnLossMinDb: standards.shape.returnLossMinDb.default(32),
});
/** 600 lbf, the figure for most cable: 7 CFR 1755.200, read. */
const pulledInN = 2668.9329691563;
const cableRead = tables.cableType.extend({ pullN: tables.cableType.shape.pullN.default(pulledInN) });
const limitRead = tables.clearanceLimit
  .extend({
    coversV: tables.clearanceLimit.shape.coversV.optional(),
    moreMPerV: tables.clearanceLimit.shape.moreMPerV.default(0),
    edgeLimitM: tables.clearanceLimit.shape.edgeLimitM.default(0),
    edgeRunM: tables.clearanceLimit.shape.edgeRunM.default(0),
  })
  .transform((row) => ({ ...row, coversV: row.coversV ?? (row.surface.startsWith("supply") ? 8700 : 0) }));

const unknownPowers = Object.fromEntries(powerColumns.map((column) => [column, null]));
const classRead = z.preprocess(
  (row) => (typeof row === "object" ? { ...unknownPowers, ...row } : row),
  tables.opticalClass,
);

const templateSchema = z.strictObject({
  kind: z.literal("strandwright template"),
  version: z.literal(2),
  standards: standardsRead,
  /** Bytes of the logo the standards name; templates without one, and older ones, have none. */
  logoBase64: z.string().nullable().default(null),
  /** Where values of the standards were read. */
  standardBases: z.array(tables.settingBasis),
  catalogues: z.strictObject({
    strandType: z.array(tables.strandType),
    cableType: z.array(cableRead),
    splitterType: z.array(tables.splitterType),
    terminalModel: z.array(tables.terminalModel),
    dropType: z.array(tables.dropType),
    /** Templates written before there were such rows name none. */
    dropPassing: z.array(tables.dropPassing).default([]),
    clearanceSet: z.array(tables.clearanceSet.extend({ baseSetId: tables.clearanceSet.shape.baseSetId.default(null) })),
    clearanceLimit: z.array(limitRead),
    strengthSet: z.array(tables.strengthSet),
    strengthLimit: z.array(tables.strengthLimit),
    loadFactor: z.array(tables.loadFactor).default([]),
    loadingDistrict: z.array(tables.loadingDistrict),
    extremeWind: z.array(tables.extremeWind).default([]),
    extremeIce: z.array(tables.extremeIce).default([]),
    windFactor: z.array(tables.windFactor).default([]),
    opticalClass: z.array(classRead),
    hardware: z.array(tables.hardware),
  }),
});

/** What taking a template would do. */
export type TemplatePlan = {
  readonly rows: readonly RowChange[];
  readonly newCount: number;
  readonly changedCount: number;
  /** The logo its standards name, in the words of the settings, and its bytes. */
  readonly logo: string;
  readonly logoBase64: string | null;
};

/** Settings that say which route it is and where, not how the company builds. */
const ownOfRoute: ReadonlySet<string> = new Set([
  "id",
  "routeName",
  "project",
  "place",
  "county",
  "unitSystem",
  "originLonDeg",
  "originLatDeg",
  "datum",
]);

/**
 * The standards and catalogues of a route as the text of a template file: JSON, SI throughout, each row with its basis.
 *
 * @param logoBase64  bytes of the logo the standards name
 */
export function writeTemplate(route: Route, logoBase64: string | null = null): string {
  const catalogues = Object.fromEntries(catalogueNames.map((table) => [table, [...route[table].values()]]));
  const standards = Object.fromEntries(Object.entries(settingsOf(route)).filter(([column]) => !ownOfRoute.has(column)));
  const standardBases = [...route.settingBasis.values()].filter(({ id }) => !ownOfRoute.has(id));
  const template = { kind: "strandwright template", version: 2, standards, logoBase64, standardBases, catalogues };
  return `${JSON.stringify(template, null, 2)}\n`;
}

/**
 * What a template would change in a route: its standards take the place of the route's, its catalogue rows are added or take
 * the place of rows of the same id; rows it does not name stay.
 *
 * @param text  content of the file as read
 */
export function planTemplate(route: Route, text: string): Result<TemplatePlan> {
  const read = readTemplate(text);
  if (!read.ok) return read;
  const { standards: own, logoBase64, standardBases, catalogues } = read.value;
  const changes = [
    ...catalogueNames.flatMap((table) => changesOf(route, table, catalogues[table])),
    ...changesOf(route, "settingBasis", standardBases),
  ];
  const before = settingsOf(route);
  const after = { ...before, ...own };
  const rows = sameRow(before, after) ? changes : [...changes, rowEdit("settings", before, after)];
  const astray = firstAstray(withRows(route, rows), rows);
  if (astray !== null) return astray;
  const newCount = rows.filter((row) => row.before === null).length;
  return ok({ rows, newCount, changedCount: rows.length - newCount, logo: own.logo, logoBase64 });
}

function readTemplate(text: string): Result<z.infer<typeof templateSchema>> {
  const parsed = templateSchema.safeParse(jsonOf(text));
  if (parsed.success) return ok(parsed.data);
  const [issue] = parsed.error.issues;
  const where = issue?.path.join(", ") ?? "";
  return where === "" || where === "kind"
    ? fail("not-a-template", "This file is not a template of standards.", where, "Choose a file this program exported.")
    : fail("bad-template", `The template cannot be read: ${issue?.message}.`, where, "Correct that value in the file.");
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return null;
  }
}

function changesOf(route: Route, table: TableName, rows: readonly { readonly id: string }[]): RowChange[] {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return [...byId.values()].flatMap((row) => {
    const before = route[table].get(row.id) ?? null;
    if (before !== null && sameRow(before, row)) return [];
    return [{ table, id: row.id, before, after: row } as RowChange]; // the template's schema checked the row against its table
  });
}

function withRows(route: Route, rows: readonly RowChange[]): Route {
  const names = [...new Set(rows.map((row) => row.table))];
  const changed = names.map((table) => {
    const own = rows.filter((row) => row.table === table).map((row) => [row.id, row.after] as const);
    return [table, new Map<string, unknown>([...route[table], ...own])] as const;
  });
  return { ...route, ...Object.fromEntries(changed) };
}

function firstAstray(next: Route, rows: readonly RowChange[]): Result<never> | null {
  for (const { table, id, after } of rows) {
    const astray = after === null ? null : strayReference(next, table, after);
    if (astray !== null)
      return fail(
        "missing-row",
        `A row of the template names a ${astray.table} that neither the template nor the route has.`,
        `${table} ${id}, ${astray.column}`,
        "Export the template again, whole.",
      );
  }
  return null;
}
