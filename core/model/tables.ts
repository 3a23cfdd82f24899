import type { z } from "zod";
import { catalogueTables } from "./catalogueRows.ts";
import { closeoutTables } from "./closeoutRows.ts";
import { layoutTables } from "./layoutRows.ts";
import { lineTables } from "./lineRows.ts";
import { officeTables } from "./officeRows.ts";
import { serviceTables } from "./serviceRows.ts";

/** Every table of a route: one schema gives the type, the file's check and a request's check. */
export const tables = {
  ...officeTables,
  ...catalogueTables,
  ...lineTables,
  ...serviceTables,
  ...layoutTables,
  ...closeoutTables,
} as const;

export type TableName = keyof typeof tables;
export type Row<T extends TableName> = Readonly<z.infer<(typeof tables)[T]>>;

export type Settings = Row<"settings">;
export type SettingBasis = Row<"settingBasis">;
export type Revision = Row<"revision">;
export type StrandType = Row<"strandType">;
export type CableType = Row<"cableType">;
export type SplitterType = Row<"splitterType">;
export type TerminalModel = Row<"terminalModel">;
export type DropType = Row<"dropType">;
export type DropPassing = Row<"dropPassing">;
export type ClearanceSet = Row<"clearanceSet">;
export type ClearanceLimit = Row<"clearanceLimit">;
export type StrengthSet = Row<"strengthSet">;
export type StrengthLimit = Row<"strengthLimit">;
export type LoadFactor = Row<"loadFactor">;
export type LoadingDistrict = Row<"loadingDistrict">;
export type ExtremeWind = Row<"extremeWind">;
export type ExtremeIce = Row<"extremeIce">;
export type WindFactor = Row<"windFactor">;
export type OpticalClass = Row<"opticalClass">;
export type Hardware = Row<"hardware">;
export type Pole = Row<"pole">;
export type Attachment = Row<"attachment">;
export type Span = Row<"span">;
export type Crossing = Row<"crossing">;
export type Structure = Row<"structure">;
export type Guy = Row<"guy">;
export type WireSag = Row<"wireSag">;
export type StrandSection = Row<"strandSection">;
export type Cable = Row<"cable">;
export type CableRun = Row<"cableRun">;
export type Slack = Row<"slack">;
export type Terminal = Row<"terminal">;
export type Splitter = Row<"splitter">;
export type Feed = Row<"feed">;
export type FiberUse = Row<"fiberUse">;
export type LivingUnit = Row<"livingUnit">;
export type Drop = Row<"drop">;
export type LayoutRecord = Row<"layoutRecord">;
export type UnservedUnit = Row<"unservedUnit">;
export type KeptTrace = Row<"trace">;
export type KeptEvent = Row<"traceEvent">;
export type SignOff = Row<"signOff">;

/** Table names in the order rows may be written so that every reference is already there. */
export const tableNames = [
  "strandType",
  "cableType",
  "splitterType",
  "terminalModel",
  "dropType",
  "dropPassing",
  "clearanceSet",
  "clearanceLimit",
  "strengthSet",
  "strengthLimit",
  "loadFactor",
  "loadingDistrict",
  "extremeWind",
  "extremeIce",
  "windFactor",
  "opticalClass",
  "hardware",
  "settings",
  "settingBasis",
  "revision",
  "waiver",
  "pole",
  "attachment",
  "guy",
  "strandSection",
  "span",
  "crossing",
  "groundPoint",
  "structure",
  "wireSag",
  "cable",
  "cableRun",
  "closure",
  "feed",
  "terminal",
  "splitter",
  "slack",
  "livingUnit",
  "dropCrossing",
  "drop",
  "fiberUse",
  "layoutRecord",
  "unservedUnit",
  "milestone",
  "reading",
  "packet",
  "rivalReading",
  "photo",
  "trace",
  "traceEvent",
  "punch",
  "signOff",
] as const satisfies readonly TableName[];
