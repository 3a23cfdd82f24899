import { z } from "zod";

/** Tables of the catalogue, in the order rows may be written so that every reference is already there. */
export const catalogueNames = [
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
] as const;

export type CatalogueName = (typeof catalogueNames)[number];

export const catalogueNameSchema = z.enum(catalogueNames);
