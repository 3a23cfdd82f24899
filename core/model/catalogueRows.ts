import { z } from "zod";
import { amount, basisFields, figure, fraction, id, label, ordinal, positive, reference, words } from "./fields.ts";

/**
 * What the line may pass over: what a crossing is, and what open ground counts as. Sailing water and the launching areas beside it go by
 * acres: under 20, to 200, to 2000, and more where no figure stands. A driveway may be a parking lot or an alley, a homeDriveway is of a
 * dwelling. Along a street or road the line hangs within the right of way and
 * not over the travelled way; at a roadside no vehicle is likely to pass under.
 */
export const lineSurfaces = [
  "road",
  "highLoadRoad",
  "stateHighway",
  "limitedAccessRoad",
  "driveway",
  "homeDriveway",
  "alongStreet",
  "alongRoad",
  "roadside",
  "rail",
  "trolley",
  "water",
  "sailingWater20",
  "sailingWater200",
  "sailingWater2000",
  "sailingWater",
  "launch20",
  "launch200",
  "launch2000",
  "launch",
  "pedestrian",
  "field",
] as const;

/** What a drop may pass over. */
export const dropSurfaces = [...lineSurfaces, "roof"] as const;

/** Cases a clearance is checked under: the finished line at the stringing temperature, hot, and under the district's ice. */
export const clearanceCases = ["stringing", "hot", "iced"] as const;

/** Cases a route is checked under only where its settings ask for it: extreme wind, extreme ice with wind, a worker on the strand. */
export const furtherCases = ["extremeWind", "extremeIce", "worker"] as const;

/** Cases whose wind blows the line out: the district's load and the extreme ones. */
export const windyCases = ["loaded", "extremeWind", "extremeIce"] as const;

/** Cases a strength is checked under: those of clearance, the district's full load of ice and wind, and the further ones. */
export const strengthCases = [...clearanceCases, "loaded", ...furtherCases] as const;

/**
 * How strand is held at the poles between its dead ends. clamped: every span hangs by itself; slipping: it slides until all pull alike,
 * as their ruling span does.
 */
export const strandAtPoles = z.enum(["clamped", "slipping"]);

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

/** What becomes of the fiber beyond a cut. left: it stays dark; reused: a tap may send light on along it. */
export const deadLength = z.enum(["left", "reused"]);

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
  /** Largest tension it may be pulled in with. */
  pullN: positive,
});

/** Splitter inside a terminal, its legs alike; an unequal tap lets the rest of the light go on along the fiber. */
const splitterType = z.strictObject({
  id,
  name: label,
  legCount: ordinal,
  /** Largest loss input to any leg, connectors not counted. */
  maxLossDb: amount,
  /** Loss to expect. */
  typicalLossDb: amount,
  ...basisFields,
  /** Loss to the fiber that goes on beyond the terminal; 0 where none does and the fiber ends here. */
  throughLossDb: amount,
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

/** What a drop may pass over, surface by surface: the layout lays none over what is forbidden and pays the rest. */
const dropPassing = z.strictObject({
  id,
  surface: z.enum(lineSurfaces),
  passing: z.enum(["allowed", "forbidden"]),
  /** Price of one drop over one of it, beside the drop's own; nothing is paid for what is forbidden. */
  costEach: amount,
  ...basisFields,
});

/** A set of clearance limits under one document. */
const clearanceSet = z.strictObject({
  id,
  name: label,
  ...basisFields,
  /** The set whose limits hold beside its own, the stricter of the two; null for none. */
  baseSetId: reference.nullable(),
});

/**
 * What a clearance limit protects; a drop has limits of its own over roads, residential driveways (dropLowDriveway: to a building too low
 * for what the line must keep there) and roofs.
 */
const clearanceSurface = z.enum([
  ...lineSurfaces,
  "dropRoad",
  "dropDriveway",
  "dropLowDriveway",
  "dropRoof",
  "buildingOver",
  "buildingUnder",
  "buildingBeside",
  "walkedRoofOver",
  "signOver",
  "signUnder",
  "signBeside",
  "litSignUnder",
  "litSignBeside",
  "groundedLitSignBeside",
  "walkedSignOver",
  "chimneyOver",
  "chimneyBeside",
  "equipmentAtPole",
  "bondedEquipmentAtPole",
  "streetLightAtPole",
  "bondedStreetLightAtPole",
  "dripLoopAtPole",
  "climbingSpace",
  "climbingSpaceAtAngle",
  "climbingLevel",
  "guyPair",
  "riserBracket",
  "supplyAtPole",
  "supplyInSpan",
  "neutralAtPole",
  "neutralInSpan",
  "communicationAtPole",
  "communicationInSpan",
]);

/**
 * One limit of a clearance set: distance that must remain, m; level beside a building or sign, else vertical. climbingLevel is the height
 * that counts as one level, guyPair how far apart two guys still count as a pair.
 */
const clearanceLimit = z.strictObject({
  id,
  clearanceSetId: reference,
  surface: clearanceSurface,
  /** The case it binds under. */
  condition: z.enum(["any", ...clearanceCases]),
  limitM: positive,
  ...basisFields,
  /** Voltage to ground of supply up to which it holds as it stands, V; 0 where voltage does not matter. */
  coversV: amount,
  /** How much more is asked for each volt beyond that, m; 0 where the document does not say. */
  moreMPerV: amount,
  /** What is asked at the edges of what is crossed, m; 0 where that is no less than between them. */
  edgeLimitM: amount,
  /** How far in from an edge that rises to the whole, m; never past the middle. */
  edgeRunM: amount,
});

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

/** Powers a class launches and bears at both ends, least and most; null where the document's figure is not known. */
export const powerColumns = [
  "hubLaunchLeastDbm",
  "hubLaunchMostDbm",
  "unitReceiveLeastDbm",
  "unitReceiveMostDbm",
  "unitLaunchLeastDbm",
  "unitLaunchMostDbm",
  "hubReceiveLeastDbm",
  "hubReceiveMostDbm",
] as const;

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
  /** Largest difference of loss between two units lit from one hub output. */
  differentialDb: positive,
  /** Longest fiber between hub and unit. */
  reachM: positive,
  hubLaunchLeastDbm: figure.nullable(),
  hubLaunchMostDbm: figure.nullable(),
  unitReceiveLeastDbm: figure.nullable(),
  unitReceiveMostDbm: figure.nullable(),
  unitLaunchLeastDbm: figure.nullable(),
  unitLaunchMostDbm: figure.nullable(),
  hubReceiveLeastDbm: figure.nullable(),
  hubReceiveMostDbm: figure.nullable(),
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
  dropPassing,
  clearanceSet,
  clearanceLimit,
  strengthSet,
  strengthLimit,
  loadFactor,
  loadingDistrict,
  extremeWind,
  extremeIce,
  windFactor,
  opticalClass,
  hardware,
};

export type LineSurface = (typeof lineSurfaces)[number];
export type DropSurface = (typeof dropSurfaces)[number];
export type ClearanceCase = (typeof clearanceCases)[number];
export type WindyCase = (typeof windyCases)[number];
export type FurtherCase = (typeof furtherCases)[number];
export type StrengthCase = (typeof strengthCases)[number];
export type ClearanceSurface = z.infer<typeof clearanceSurface>;
