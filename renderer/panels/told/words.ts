/** What the side panel tells of each kind of row; one place to translate. */

type PortCounts = { readonly used: number; readonly reserved: number; readonly spare: number };

/** The route as a whole. */
export const routeWords = {
  project: "Project",
  company: "Company",
  file: "File",
  poles: "Poles",
  strand: "Strand",
  sheath: "Cable sheath, coils included",
  terminals: "Terminals",
  ports: "Ports",
  portCounts: (all: number, reserved: number, spare: number): string =>
    `${all}, ${reserved === 0 ? "" : `${reserved} reserved, `}${spare} spare`,
  units: "Living units",
  unitCounts: (all: number, served: number): string => `${all}, ${served} served`,
  cables: "Cables",
  chooseOne: "Choose a pole, span, terminal or house on the diagram to read about it.",
};

/** A terminal. */
export const terminalWords = {
  cable: "Cable",
  station: "From the feed end",
  notOnCable: "not on its cable",
  ports: "Ports",
  portCounts: ({ used, reserved, spare }: PortCounts): string =>
    `${used} used, ${reserved === 0 ? "" : `${reserved} reserved, `}${spare} spare`,
  reservedFor: "Reserved for",
  coil: "Coil",
  coilAndNeed: (coil: string, need: string): string => `${coil}, the opening takes ${need}`,
  placed: "Placed",
  byPerson: "by a person; no layout moves it",
  why: "Why here",
  face: "Face",
  fibers: "Fibers",
  noFiber: "No fiber feeds this terminal yet.",
  tube: "tube",
  fiber: "fiber",
  splitter: (position: number): string => `splitter ${position}`,
  noSplitter: "no splitter",
  port: "Port",
  unit: "Living unit",
  drop: "Drop",
  spare: "spare",
  reserved: "reserved",
};

/** A living unit. */
export const unitWords = {
  servedBy: "Served by",
  noPort: (why: string): string => (why === "" ? "No port yet." : `No port: the layout found none. ${why}`),
  terminal: "Terminal",
  port: "Port",
  portOf: (port: number, byPerson: boolean): string => `${port}${byPerson ? ", chosen by a person" : ""}`,
  distance: "Distance",
  cut: "Drop to cut",
  sameBuilding: "In the same building",
  light: "Light",
  lossUp: "Loss on the way up",
  lossDown: "Loss on the way down",
};

/** A span. */
export const spanWords = {
  strand: "Strand",
  noStrand: "none of ours",
  section: "Section",
  cable: (count: number): string => (count > 1 ? "Cables" : "Cable"),
  noCable: "none",
  crossings: "Crossings",
  hungFrom: (tag: string): string => `Hung from ${tag} on`,
  noSag: (why: string): string => `Sag: ${why}`,
  sagAtMidspan: "Sag at midspan, in wind in the plane it is blown into",
  condition: "Condition",
  at: "At",
  tension: "Tension",
  sag: "Sag",
  load: {
    loaded: "Load of the line, loaded",
    extremeWind: "Load in extreme wind",
    extremeIce: "Load under extreme ice",
  },
  governs: "Governing case of strength",
  noStrengthLimit: "no limit in the strength set",
  ofBreaking: "Of the breaking strength",
  shareOf: (share: string, allowed: string): string => `${share} % of ${allowed} % allowed`,
  separation: "Separation in the span",
  wire: (party: string, owner: string): string => `${party}, ${owner}`,
};

/** A crossing. */
export const crossingWords = {
  span: "Span",
  limit: "Limit",
  noLimitInSet: "none in the clearance set",
  basis: "Basis",
  clearance: "Clearance",
  noLimit: "no limit",
  ofLimit: (limit: string, isUnverified: boolean): string => `of ${limit}${isUnverified ? ", unverified" : ""}`,
  surfaceTaken: "The surface was taken as the straight line between the ground at both poles.",
  strandTaken: "A pole lacks the height of our strand; the company's usual one was taken.",
};

/** A coil or a closure. */
export const hungWords = {
  span: "Span",
  fromPole: (tag: string): string => `From pole ${tag}`,
  cable: "Cable",
  waitsFor: "Waits for",
};

/** A guy. */
export const guyWords = {
  pole: "Pole",
  governs: "Governing case",
  pull: "Pull, with load factors",
  guy: "Of the guy",
  anchor: "Of the anchor",
  allowed: { guy: "Allowed for the guy", anchor: "Allowed for the anchor" },
  unknown: "A tension here is unknown.",
} as const;

/** A structure. */
export const siteWords = {
  span: "Span",
  beside: "Beside the line",
  passesOver: "the line passes over it",
  passesEither: "the line passes over or under it",
  basis: "Basis",
  over: "Height over it",
  under: "Depth under it",
  of: (limit: string): string => `of ${limit}`,
  noLimit: "no limit",
} as const;

/** An attachment. */
export const attachmentToldWords = {
  pole: "Pole",
  aboveOurs: "Above ours",
  kept: "To be kept",
  basis: "Basis",
} as const;

/** The heights our strand may have on a pole. */
export const rangeWords = {
  title: "Heights for our strand",
  noHeight: "at no height",
  or: ", or ",
  others: (count: number): string => `${count} more that bar less`,
  cheapest: "Cheapest",
  next: "Next best",
  total: "Moves of others in all:",
  fixTold: "Records these heights as one edit; undo takes it back",
} as const;

/** A pole. */
export const poleWords = {
  attachments: "Attachments",
  noHeights: "No heights are recorded on this pole.",
  height: "Height",
  what: "What",
  aboveOurs: "Above ours",
  spans: "Spans",
  spanTo: (tag: string): string => `to ${tag}`,
  lineLoad: (set: string, isUnverified: boolean): string =>
    `Our line on the pole, with the load factors of ${set}${isUnverified ? ", unverified" : ""}`,
  inCase: "Case",
  down: "Weight",
  across: "Wind across",
};
