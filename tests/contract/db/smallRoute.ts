import { digestOf } from "../../../core/closeout/digest.ts";
import { emptyRoute, type Route } from "../../../core/model/route.ts";
import type { RowChange } from "../../../core/model/rowChange.ts";
import type { Pole, Settings, SignOff, Span } from "../../../core/model/tables.ts";

const basis = { basisDocument: "made up for tests", basisClause: "", basisEdition: "", basisMark: "practice" } as const;

const settings: Settings = {
  id: "settings",
  routeName: "Two poles",
  project: "",
  place: "",
  county: "",
  company: "",
  unitSystem: "us",
  originLonDeg: null,
  originLatDeg: null,
  datum: "",
  standoffM: 0.9144,
  climbingSpaceM: 0.381,
  hangingGapM: 0.3,
  openingM: 1.5,
  accessSlackM: 3.048,
  dropReachM: 60,
  dropAllowanceM: 5,
  sparePortCount: 1,
  spareFiberPerTubeCount: 2,
  strandHeightM: 7,
  clearanceSetId: "limits",
  strengthSetId: "strengths",
  groundSurface: "pedestrian",
  unguyedAngleRad: 0.0873,
  usableFromM: 5.4864,
  poleTopGapM: 0.15,
  sagMatchFrac: 0.25,
  dropSagFrac: 0.03,
  loadingDistrictId: "district",
  extremeWindId: null,
  extremeIceId: null,
  workerLoadN: 0,
  generalNotes: "",
  titleLine: "",
  sheetsLeftOut: "",
  paper: "usual",
  newLineMm: "0.5",
  existingLineMm: "0.35",
  dimensionLineMm: "0.18",
  markLineMm: "0.35",
  frameLineMm: "0.5",
  layerNames: "",
  logo: "",
  offsetToleranceM: 0.0508,
  readingToleranceDb: 1.5,
  markToleranceFrac: 0.02,
  markToleranceM: 0.6096,
  groundMaxOhm: 25,
  spliceMaxDb: 0.2,
  connectionMaxDb: 0.5,
  reflectanceMaxDb: -45,
  sectionMaxDbPerKm: 0.4,
  returnLossMinDb: 32,
  strandTypeId: "strand",
  dropTypeId: "drop",
  opticalClassId: "light",
  stringingSagFrac: 0.01,
  stringingDegC: 15,
  otherWireSagFrac: 0.02,
  spliceLossDb: 0.1,
  connectionLossDb: 0.5,
  marginDb: 3,
  minSpanM: 5,
  maxSpanM: 120,
  lashingNPerM: 0.2,
  billAllowanceFrac: 0.05,
  pieceAllowanceFrac: 0,
  strandAtPoles: "clamped",
  deadLength: "left",
};

const catalogue: Partial<Route> = {
  strandType: byId({
    id: "strand",
    name: "Strand",
    diameterM: 0.00635,
    weightNPerM: 1.77,
    areaM2: 2.3e-5,
    modulusPa: 1.6e11,
    expansionPerC: 1.15e-5,
    breakingN: 29580,
    costPerM: 1,
    ...basis,
  }),
  dropType: byId({
    id: "drop",
    name: "Drop",
    weightNPerM: 0.2,
    attenuationDbPerKm: 0.35,
    costPerM: 0.5,
    costEach: 10,
    ...basis,
  }),
  opticalClass: byId({
    id: "light",
    system: "made up",
    name: "Light",
    minLossDb: 13,
    maxLossDb: 28,
    maxSplitCount: 32,
    upNm: 1310,
    downNm: 1490,
    upDbPerKm: 0.35,
    downDbPerKm: 0.25,
    differentialDb: 15,
    reachM: 20000,
    hubLaunchLeastDbm: 1.5,
    hubLaunchMostDbm: 5,
    unitReceiveLeastDbm: -27,
    unitReceiveMostDbm: -8,
    unitLaunchLeastDbm: null,
    unitLaunchMostDbm: null,
    hubReceiveLeastDbm: null,
    hubReceiveMostDbm: null,
    ...basis,
  }),
  clearanceSet: byId({ id: "limits", name: "Limits", ...basis, baseSetId: null }),
  strengthSet: byId({ id: "strengths", name: "Strengths", ...basis }),
  loadingDistrict: byId({
    id: "district",
    name: "District",
    iceM: 0.0064,
    iceDensityKgPerM3: 913,
    windPa: 190,
    temperatureDegC: -10,
    constantNPerM: 2.9,
    hotDegC: 50,
    icedDegC: 0,
    ...basis,
  }),
};

/** A pole that stands where its number says. */
export function poleNumbered(number: number): Pole {
  return {
    id: `pole-${number}`,
    tag: `P${number}`,
    eastM: 40 * number,
    northM: 0,
    groundM: null,
    aboveGroundM: 9.5,
    poleClass: "",
    owner: "",
    line: "main",
    order: number,
    terminalAllowed: true,
    note: "",
  };
}

/** The span between two neighbouring poles. */
export function spanAfter(number: number): Span {
  return {
    id: `span-${number}`,
    fromPoleId: `pole-${number}`,
    toPoleId: `pole-${number + 1}`,
    lengthM: 40,
    strandSectionId: null,
    origin: "ordered",
    note: "",
  };
}

/** The edit that puts up one pole. */
export function raisePole(number: number): RowChange {
  const after = poleNumbered(number);
  return { table: "pole", id: after.id, before: null, after };
}

/** The edit that signs for a route as it stands. */
export function signatureFor(route: Route): RowChange {
  const nobody = { reopenedBy: "", reopenedIso: "", reopenReason: "" };
  const signed = { by: "Ann", atIso: "2026-03-04T05:06:07Z", role: "", note: "", ...nobody };
  const after: SignOff = { id: "signOff-1", number: 1, stage: "built", digest: digestOf(route), ...signed };
  return { table: "signOff", id: after.id, before: null, after };
}

/** Two poles, the span between them and no strand: the smallest route worth a file. */
export function smallRoute(): Route {
  return {
    ...emptyRoute(),
    ...catalogue,
    settings: byId(settings),
    pole: byId(poleNumbered(1), poleNumbered(2)),
    span: byId(spanAfter(1)),
  };
}

function byId<R extends { readonly id: string }>(...rows: R[]): ReadonlyMap<string, R> {
  return new Map(rows.map((row) => [row.id, row]));
}
