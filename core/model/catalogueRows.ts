import { z } from "zod";
import { amount, basisFields, figure, fraction, id, label, ordinal, positive, reference, words } from "./fields.ts";

/** Steel strand as bought: what carries the route. */
const strandType = z.strictObject({
  id,
  name: label,
  diameterM: positive,
  weightNPerM: positive,
  areaM2: positive,
  modulusPa: positive,
  expansionPerC: positive,
  /** Rated breaking strength. */
  breakingN: positive,
  costPerM: amount,
  ...basisFields,
});

/** Loose-tube fiber cable. */
const cableType = z.strictObject({
  id,
  name: label,
  fiberCount: ordinal,
  fibersPerTube: ordinal,
  diameterM: positive,
  weightNPerM: positive,
  /** Longest length delivered on one reel. */
  reelLengthM: positive,
  /** Fiber length over sheath length. */
  fiberExcessFrac: fraction,
  costPerM: amount,
  ...basisFields,
});

/** Uniform 1 x N splitter inside a terminal. */
const splitterType = z.strictObject({
  id,
  name: label,
  legCount: ordinal,
  /** Largest loss input to any leg, connectors not counted. */
  maxLossDb: amount,
  /** Loss to expect. */
  typicalLossDb: amount,
  ...basisFields,
});

/** A strand-mounted terminal as bought: its ports, its face and the splitters inside. */
const terminalModel = z.strictObject({
  id,
  name: label,
  portCount: ordinal,
  splitterTypeId: reference,
  splitterCount: ordinal,
  /** Ranks of ports on the face. */
  rankCount: ordinal,
  /** rank: numbers run along a rank, then the next; column: down the ranks, then along. */
  numbering: z.enum(["rank", "column"]),
  lengthM: positive,
  weightN: positive,
  cost: amount,
  ...basisFields,
});

/** Drop cable from a port to a living unit. */
const dropType = z.strictObject({
  id,
  name: label,
  weightNPerM: positive,
  attenuationDbPerKm: amount,
  costPerM: amount,
  /** Price of one drop whatever its length. */
  costEach: amount,
  ...basisFields,
});

/** A set of clearance limits under one document. */
const clearanceSet = z.strictObject({ id, name: label, ...basisFields });

/** What a clearance limit protects. */
const clearanceSurface = z.enum([
  "road",
  "driveway",
  "rail",
  "water",
  "pedestrian",
  "field",
  "supplyAtPole",
  "supplyInSpan",
  "neutralAtPole",
  "neutralInSpan",
  "communicationAtPole",
  "communicationInSpan",
]);

/** One limit of a clearance set: vertical distance that must remain, m. */
const clearanceLimit = z.strictObject({
  id,
  clearanceSetId: reference,
  surface: clearanceSurface,
  limitM: positive,
  ...basisFields,
});

/** Wind and ice the strand must bear, and the two conditions its clearances are checked under. */
const loadingDistrict = z.strictObject({
  id,
  name: label,
  iceM: amount,
  iceDensityKgPerM3: positive,
  windPa: amount,
  temperatureDegC: figure,
  /** Constant added to the resultant for tension only. */
  constantNPerM: amount,
  /** Hot clearance condition: no wind, no ice. */
  hotDegC: figure,
  /** Iced clearance condition: iceM of ice, no wind, no constant. */
  icedDegC: figure,
  ...basisFields,
});

/** Light class of a passive optical network: both limits bind. */
const opticalClass = z.strictObject({
  id,
  system: label,
  name: label,
  minLossDb: amount,
  maxLossDb: positive,
  /** Living units one hub output may be split to. */
  maxSplitCount: ordinal,
  upNm: positive,
  downNm: positive,
  upDbPerKm: positive,
  downDbPerKm: positive,
  ...basisFields,
});

/** Small parts counted in the bill of materials. */
const hardware = z.strictObject({
  id,
  name: label,
  unit: label,
  /** What one lot of it goes with. */
  per: z.enum(["pole", "terminal", "drop", "coil", "closure", "deadEnd", "strandM", "cableM"]),
  quantity: positive,
  cost: amount,
  note: words,
  ...basisFields,
});

export const catalogueTables = {
  strandType,
  cableType,
  splitterType,
  terminalModel,
  dropType,
  clearanceSet,
  clearanceLimit,
  loadingDistrict,
  opticalClass,
  hardware,
};

export type ClearanceSurface = z.infer<typeof clearanceSurface>;
