import { z } from "zod";
import { amount, basisFields, id, label, positive, reference } from "./fields.ts";

/**
 * What the line may pass over: what a crossing is, and what open ground counts as. Sailing water and the launching areas beside it go by
 * acres: under 20, to 200, to 2000, and more where no figure stands. A driveway may be a parking lot or an alley, a homeDriveway is of a
 * dwelling. Along a street or road the line hangs within the right of way and not over the travelled way; at a roadside no vehicle is
 * likely to pass under.
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

/** Tables of what a line and its drops keep clear of, and what drops may pass. */
export const clearanceTables = { dropPassing, clearanceSet, clearanceLimit };

export type LineSurface = (typeof lineSurfaces)[number];
export type DropSurface = (typeof dropSurfaces)[number];
export type ClearanceCase = (typeof clearanceCases)[number];
export type ClearanceSurface = z.infer<typeof clearanceSurface>;
