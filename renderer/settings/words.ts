import type { CatalogueName } from "../../core/model/catalogueNames.ts";
import type { Settings } from "../../core/model/tables.ts";
import { drawingStyleWords } from "./drawingWords.ts";

export type StandardColumn = Exclude<keyof Settings, "id" | "originLonDeg" | "originLatDeg" | "datum">;

export const words = {
  title: "Standards and catalogues",
  sections: "Sections",
  standards: "Company standards",
  close: "Back to the diagram",
  add: "Add a row",
  copy: "Copy the row",
  remove: "Remove the row",
  exportAll: "Export as a template",
  importAll: "Import a template",
  saved: (fileName: string): string => `Standards saved as ${fileName}.`,
  rows: "Rows",
  empty: "This catalogue has no row. Import a template that has some.",
  standIn: (name: string): string => `figures stand in, taken from ${name}, until the maker's sheet is entered`,
  newName: (name: string): string => `${name}, new`,
  copyName: (name: string): string => `${name}, copy`,
  taken: (newCount: number, changedCount: number): string =>
    newCount + changedCount === 0
      ? "The template says what the route has already."
      : `Template taken: ${newCount} new, ${changedCount} changed. One undo takes it back.`,
  ownValue: "changed in this route: the company's own",
  basis: "Basis",
} as const;

/** Why what was typed is not taken. */
export const wrongWords = {
  notHere: (isFigure: boolean, why: string): string =>
    `This ${isFigure ? "figure" : "text"} is not possible here: ${why}.`,
  empty: "it must not be empty",
  least: (isIncluded: boolean, least: number | bigint): string =>
    `it must be ${isIncluded ? "at least" : "more than"} ${least}`,
  long: (most: number | bigint): string => `it is longer than ${most} letters`,
  most: (most: number | bigint): string => `it must be at most ${most} (100 % is 1)`,
  whole: "it must be a whole number",
  unknown: "it is not one of those the catalogue knows",
  unread: (text: string, example: string): string => `"${text}" cannot be read. Write it like ${example}.`,
  noTemperature: (unit: string): string => `"${unit}" is not a temperature. Write °F or °C.`,
} as const;

export const unitWords = { us: "Feet and inches", metric: "Metric", none: "none" } as const;

/** How far a figure can be trusted, in words. */
export const markWords = {
  seen: "seen: read in a public copy of the document",
  memory: "unverified, from memory: believed to be in the document, not read again",
  practice: "practice: trade habit or the company's own",
  computed: "computed: worked out from a stated formula",
} as const;

export const catalogueWords: Readonly<Record<CatalogueName, string>> = {
  strandType: "Strand",
  cableType: "Cable",
  splitterType: "Splitters",
  terminalModel: "Terminal models",
  dropType: "Drop cable",
  dropPassing: "What drops may pass",
  clearanceSet: "Clearance sets",
  clearanceLimit: "Clearance limits",
  strengthSet: "Strength sets",
  strengthLimit: "Strength limits",
  loadFactor: "Load factors",
  loadingDistrict: "Loading districts",
  extremeWind: "Extreme wind",
  extremeIce: "Extreme ice with wind",
  windFactor: "Factors of extreme wind",
  opticalClass: "Optical classes",
  hardware: "Hardware",
};

/** Each standard: its name, and what it means on the line. */
export const standardWords: Readonly<Record<StandardColumn, readonly [name: string, meaning: string]>> = {
  routeName: ["Route", "Printed on every sheet."],
  project: ["Project", "Printed on every sheet."],
  place: ["Place", "Town or district the route lies in."],
  county: ["County", "Printed on every sheet."],
  company: ["Company", "Whose drawings these are."],
  unitSystem: ["Units", "Read on screen and on paper; either is taken when typed."],
  standoffM: ["Terminal offset", "From the pole's centre line to the middle of a terminal hung at it."],
  climbingSpaceM: ["Climbing space", "Half width kept free for a climber, from the pole's centre line."],
  hangingGapM: ["Gap between hung things", "End to end along one strand."],
  openingM: ["Sheath opening", "Sheath opened at a terminal."],
  accessSlackM: ["Access slack", "Sheath in the coil at a terminal: a coil as long as the opening, doubled."],
  dropReachM: ["Drop reach", "Longest drop from a port to a living unit."],
  dropAllowanceM: ["Drop allowance", "Added to the drawn drop: down the house and inside."],
  sparePortCount: ["Spare ports", "Left free in each terminal."],
  spareFiberPerTubeCount: ["Spare fibers", "Left free in each tube."],
  strandHeightM: ["Strand height", "Above ground at a pole, where nothing on the pole says otherwise."],
  clearanceSetId: ["Clearance set", "Limits the strand is checked against."],
  strengthSetId: [
    "Strength set",
    "Parts of the breaking strength the strand and the guys are checked against, and the load factors of its grade of construction.",
  ],
  groundSurface: ["Ground under spans", "What it counts as where no crossing says otherwise."],
  unguyedAngleRad: ["Angle without a guy", "A strand may turn by this at a pole that has no guy."],
  usableFromM: ["Usable space from", "Lowest height on a pole where our strand may be attached."],
  poleTopGapM: ["Gap at the pole top", "Kept free below the top of a pole."],
  sagMatchFrac: ["Sag beside a neighbour", "How far our sag may differ from a neighbour's line, over the neighbour's."],
  dropSagFrac: ["Drop sag", "Sag of a drop over its run."],
  loadingDistrictId: ["Loading district", "Wind and ice the strand is checked under."],
  extremeWindId: [
    "Extreme wind",
    "Gust of the place's wind map, without ice, checked beside the district's load. Its row tells over which height its document asks for it (NESC: 60 ft).",
  ],
  extremeIceId: [
    "Extreme ice with wind",
    "Ice and gust of the place's ice map, checked beside the district's load; asked for over the same height.",
  ],
  workerLoadN: [
    "Worker on the strand",
    "A person with chair and tools at midspan, in still air at the stringing temperature. 0: not checked.",
  ],
  strandTypeId: ["Strand", "Strung where no other is chosen."],
  dropTypeId: ["Drop cable", "Run where no other is chosen."],
  opticalClassId: ["Optical class", "Limits of light the route is checked against."],
  stringingSagFrac: ["Stringing sag", "Sag over span length when the strand is strung."],
  stringingDegC: ["Stringing temperature", "At which the sag is set."],
  strandAtPoles: [
    "New strand at the poles",
    "Clamped: every span hangs by itself. Slipping: the spans from dead end to dead end pull alike.",
  ],
  otherWireSagFrac: ["Sag of others' wires", "Assumed over span length where nobody measured it."],
  spliceLossDb: ["Splice loss", "One fusion splice."],
  connectionLossDb: ["Connection loss", "One mated pair of connectors."],
  deadLength: [
    "Fiber beyond a cut",
    "Left: it stays dark. Reused: a tap may send light on along it. Chained: the layout hangs taps one behind the other on one fiber, of sizes taps are made in.",
  ],
  marginDb: ["Margin", "Light kept in hand for repairs and age."],
  minSpanM: ["Shortest span", "A shorter one is told as a finding."],
  maxSpanM: ["Longest span", "A longer one is told as a finding."],
  lashingNPerM: ["Lashing wire", "Its weight along the span."],
  billAllowanceFrac: ["Bill allowance", "Added to lengths and other hardware in the bill of materials, for waste."],
  pieceAllowanceFrac: [
    "Spare terminals and anchors",
    "Added to terminals and to pieces at guys in the bill of materials, rounded up to whole ones.",
  ],
  generalNotes: [
    "Notes of the company",
    "General notes for its drawings, one a line; they print on a sheet behind the cover.",
  ],
  titleLine: [
    "Line of the title block",
    "What the company or a permit asks for on every sheet, such as a drawing or permit number.",
  ],
  sheetsLeftOut: [
    "Sheets of the set",
    "Kinds of sheets that are drawn; each gives its numbers to the next where it is left out.",
  ],
  offsetToleranceM: ["Offset as built", "How far a terminal may hang from the drawn offset."],
  readingToleranceDb: ["Light as built", "How much less than expected a port may have."],
  markToleranceFrac: [
    "Sheath as built, share",
    "How far sheath used may differ from the drawn length, as a share of it.",
  ],
  markToleranceM: ["Sheath as built, length", "And this much more."],
  groundMaxOhm: ["Ground", "Most resistance of a ground."],
  spliceMaxDb: ["Splice in a trace", "Most loss, the mean of both directions where both were taken."],
  connectionMaxDb: ["Connection in a trace", "Most loss."],
  reflectanceMaxDb: ["Reflection in a trace", "Strongest reflection of a connection."],
  sectionMaxDbPerKm: ["Section in a trace", "Most loss along the fiber."],
  returnLossMinDb: ["Return loss", "Least of the whole way."],
  paper: ["Paper", "What sets are drawn on. Usual: ANSI B in feet and inches, A3 in metric."],
  ...drawingStyleWords,
};

/** The choice of no row in the standards: the route is not checked under it. */
export const chosenNone = "Not checked";

/** Columns of the catalogues as people call them. */
const columnWords: Readonly<Record<string, string>> = {
  name: "Name",
  diameterM: "Diameter",
  weightNPerM: "Weight along its length",
  areaM2: "Steel area",
  modulusPa: "Modulus of elasticity",
  expansionPerC: "Thermal expansion",
  breakingN: "Rated breaking strength",
  costPerM: "Price by length",
  passing: "A drop over it is",
  fiberCount: "Fibers",
  fibersPerTube: "Fibers in a tube",
  reelLengthM: "Reel length",
  fiberExcessFrac: "Fiber longer than sheath",
  pullN: "Largest pulling tension",
  legCount: "Legs",
  maxLossDb: "Largest loss",
  minLossDb: "Least loss",
  typicalLossDb: "Loss to expect",
  throughLossDb: "Loss to the fiber that goes on",
  portCount: "Ports",
  splitterTypeId: "Splitter inside",
  splitterCount: "Splitters inside",
  rankCount: "Ranks of ports",
  numbering: "Ports numbered along a",
  lengthM: "Length",
  weightN: "Weight",
  cost: "Price",
  attenuationDbPerKm: "Attenuation",
  costEach: "Price of one",
  clearanceSetId: "Clearance set",
  surface: "Over or beside",
  condition: "Binds",
  strengthSetId: "Strength set",
  part: "What is pulled",
  limitFrac: "Part of the breaking strength",
  load: "Load",
  limitM: "Distance that must remain",
  coversV: "Covers supply up to, to ground",
  moreMPerV: "More beyond that",
  edgeLimitM: "Enough at the edges of what is crossed",
  edgeRunM: "The whole again, in from an edge",
  baseSetId: "Stands on the limits of",
  iceM: "Ice",
  iceDensityKgPerM3: "Ice density",
  windPa: "Wind",
  gustMPerS: "Gust",
  shapeFactor: "Shape factor",
  importanceFactor: "Importance factor",
  aboveM: "Asked for above",
  kind: "Goes by",
  upToM: "Holds up to",
  factor: "Factor",
  temperatureDegC: "Temperature under load",
  constantNPerM: "Constant added to the load",
  hotDegC: "Hot condition for clearance",
  icedDegC: "Iced condition for clearance",
  system: "System",
  maxSplitCount: "Largest split",
  upNm: "Wavelength up",
  downNm: "Wavelength down",
  upDbPerKm: "Attenuation up",
  downDbPerKm: "Attenuation down",
  differentialDb: "Largest difference between units",
  reachM: "Longest fiber to a unit",
  hubLaunchLeastDbm: "Launched at the hub, least",
  hubLaunchMostDbm: "Launched at the hub, most",
  unitReceiveLeastDbm: "Needed at the unit",
  unitReceiveMostDbm: "Borne at the unit",
  unitLaunchLeastDbm: "Launched at the unit, least",
  unitLaunchMostDbm: "Launched at the unit, most",
  hubReceiveLeastDbm: "Needed at the hub",
  hubReceiveMostDbm: "Borne at the hub",
  unit: "Counted in",
  per: "One lot for each",
  quantity: "Quantity in a lot",
  note: "Note",
  basisDocument: "Document",
  basisClause: "Clause",
  basisEdition: "Edition",
  basisMark: "Mark",
};

/** A column of a catalogue in words. */
export function columnName(column: string): string {
  return columnWords[column] ?? column;
}

/** Sailing water and launching areas by the acres of the water; as shown where a limit or a crossing is chosen. */
const areaWords: ReadonlyMap<string, string> = new Map([
  ["sailingWater20", "sailing water under 20 acres"],
  ["sailingWater200", "sailing water of 20 to 200 acres"],
  ["sailingWater2000", "sailing water of 200 to 2000 acres"],
  ["sailingWater", "sailing water over 2000 acres"],
  ["launch20", "boat launch, water under 20 acres"],
  ["launch200", "boat launch, water of 20 to 200 acres"],
  ["launch2000", "boat launch, water of 200 to 2000 acres"],
  ["launch", "boat launch, water over 2000 acres"],
]);

/** A value of a list as it is read: `communicationAtPole` as "communication at pole". */
export function valueWords(value: string): string {
  return areaWords.get(value) ?? value.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
