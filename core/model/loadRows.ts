import { z } from "zod";
import { clearanceCases } from "./clearanceRows.ts";
import { amount, basisFields, figure, fraction, id, label, positive, reference } from "./fields.ts";

/** Cases a route is checked under only where its settings ask for it: extreme wind, extreme ice with wind, a worker on the strand. */
export const furtherCases = ["extremeWind", "extremeIce", "worker"] as const;

/** Cases whose wind blows the line out: the district's load and the extreme ones. */
export const windyCases = ["loaded", "extremeWind", "extremeIce"] as const;

/** Cases a strength is checked under: those of clearance, the district's full load of ice and wind, and the further ones. */
export const strengthCases = [...clearanceCases, "loaded", ...furtherCases] as const;

/** A set of strength limits under one document. */
const strengthSet = z.strictObject({ id, name: label, ...basisFields });

/** One limit of a strength set: the largest part of the rated breaking strength a thing may be pulled with. */
const strengthLimit = z.strictObject({
  id,
  strengthSetId: reference,
  /** strand: tension at the pole; pullDifference: one span against the next along the strand; guy: the strand of a guy;
   * anchor: a guy's pull against the anchor's holding strength. */
  part: z.enum(["strand", "pullDifference", "guy", "anchor"]),
  /** The case it binds under. */
  condition: z.enum(strengthCases),
  limitFrac: fraction,
  ...basisFields,
});

/** What a load is multiplied with before it is held against a strength, by the grade of construction that the set stands for. */
const loadFactor = z.strictObject({
  id,
  strengthSetId: reference,
  /** vertical: weight and ice; wind: level, across the line; windAtCrossing: the same beside a crossing of road, rail or sailing water;
   * tension: of the strand where it turns; deadEnd: where it ends. */
  load: z.enum(["vertical", "wind", "windAtCrossing", "tension", "deadEnd"]),
  /** The case it holds in; 1 in those without a row. */
  condition: z.enum(windyCases),
  factor: positive,
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

/** Wind of a place's map, which a strand in the open must bear without ice. */
const extremeWind = z.strictObject({
  id,
  name: label,
  /** 3 s gust 10 m above open ground. */
  gustMPerS: positive,
  shapeFactor: positive,
  importanceFactor: positive,
  temperatureDegC: figure,
  /** The document asks for it only where a part of a pole or of its line stands higher above the ground. */
  aboveM: amount,
  ...basisFields,
});

/** Ice of a place's map with the gust that blows on it. */
const extremeIce = z.strictObject({
  id,
  name: label,
  iceM: amount,
  iceDensityKgPerM3: positive,
  gustMPerS: amount,
  shapeFactor: positive,
  temperatureDegC: figure,
  /** The document asks for it only where a part of a pole or of its line stands higher above the ground. */
  aboveM: amount,
  ...basisFields,
});

/** What makes the pressure of extreme wind on a wire more or less. */
const windFactor = z.strictObject({
  id,
  name: label,
  /** height: kz, by the height of the wire above ground; span: GRF, by the length of the span. */
  kind: z.enum(["height", "span"]),
  /** Holds up to this height or length, from the row below it on. */
  upToM: positive,
  factor: positive,
  ...basisFields,
});

/** Tables of what a line is loaded with, and what it must bear. */
export const loadTables = {
  strengthSet,
  strengthLimit,
  loadFactor,
  loadingDistrict,
  extremeWind,
  extremeIce,
  windFactor,
};

export type WindyCase = (typeof windyCases)[number];
export type FurtherCase = (typeof furtherCases)[number];
export type StrengthCase = (typeof strengthCases)[number];
