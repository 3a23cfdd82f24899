import type { AddingState, AddingTool } from "./addingState.ts";

/** Words of the tools that add by hand. */
export const words = {
  rail: "Add by hand",
  names: {
    pole: "Add a pole",
    span: "Add a span",
    lateral: "Start a lateral",
    crossing: "Add a crossing",
    structure: "Add a structure",
    groundPoint: "Add a ground point",
    attachment: "Add an attachment",
    guy: "Add a guy",
    unit: "Add a living unit",
    terminal: "Hang a terminal",
  },
  stop: (name: string) => `Stop: ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  done: "Done",
  add: "Add",
  surface: "Surface",
  name: "Name",
  width: "Width",
  owner: "Owner",
  kind: "Kind",
  height: "Height",
  what: "What",
  along: "Along the span",
  beside: "Beside the line",
  side: "Side",
  leftOf: (from: string, to: string) => `left, from ${from} to ${to}`,
  rightOf: (from: string, to: string) => `right, from ${from} to ${to}`,
  top: "Top above ground",
  elevation: "Elevation",
  strand: "Strand",
  lead: "Lead",
  anchorHolds: "Anchor holds",
  needsForce: "Type what the anchor holds, above nothing, or leave it empty.",
  needsElevation: "Type an elevation, such as 331 ft or 101.2 m.",
  needsBeside: "Type a length, or 0 where the line passes over it.",
  needsAnchor: "The anchor stands in the ground: click where, beside the pole.",
  spanLength: "Length of the span",
  address: "Address",
  needsAddress: "Type the address of the living unit.",
  needsLength: "Type a length above nothing, such as 18 ft 6 in or 5.6 m.",
  guyForm: "Say what it is made of and what its anchor holds, then add it.",
  groundOnly: "This place is chosen on the ground: draw the route true to the ground first.",
  needsPole: "There is no pole here: click a pole.",
  needsSpan: "There is no span here: click on a span.",
  needsOtherPole: "A span needs two poles: click another pole.",
  joinedAlready: "There is a span between these two poles already.",
  noModel: "The catalogue has no terminal model.",
  surfaces: {
    road: "Road",
    highLoadRoad: "High-load road",
    limitedAccessRoad: "Limited-access road",
    driveway: "Drive",
    roadside: "Roadside",
    rail: "Rail",
    water: "Water",
    sailingWater: "Sailing water",
    pedestrian: "Path",
    field: "Field",
  },
  kinds: {
    communication: "Communication",
    neutral: "Neutral",
    secondary: "Secondary",
    primary: "Primary",
    equipment: "Equipment",
    streetLight: "Street light",
    riser: "Riser",
    ourStrand: "Our strand",
  },
} as const;

type Hint = { readonly first: string; readonly next: string };

const hints: Readonly<Record<AddingTool, Hint>> = {
  pole: {
    first: "Click the ground to set a pole, a span to split it, or a pole to go on from it.",
    next: "Click where the next pole stands, or point there and type the length of the span.",
  },
  span: { first: "Click the pole where the span begins.", next: "Click the pole where the span ends." },
  lateral: {
    first: "Click the pole where the lateral leaves the line.",
    next: "Click where the lateral's next pole stands, or point there and type the length of the span.",
  },
  crossing: {
    first: "Drag along a span from one edge of what it crosses to the other.",
    next: "Choose what lies there, then add it.",
  },
  structure: {
    first: "Drag along the span from one end of the building or sign to the other.",
    next: "Say what it is, how far beside the line and how high, then add it.",
  },
  groundPoint: { first: "Click the span over the point that was measured.", next: "Type its elevation, then add it." },
  guy: { first: "Click the pole the guy holds.", next: "Click where its anchor stands." },
  attachment: { first: "Click the pole it is on.", next: "Say whose it is and how high, then add it." },
  unit: { first: "Click where the house stands.", next: "Type its address, then add it." },
  terminal: { first: "Click a span near the pole the terminal hangs beside.", next: "" },
};

/** What to click next. */
export function hintOf({ tool, fromPoleId, form }: AddingState): string {
  if (form?.kind === "guy") return words.guyForm;
  return fromPoleId === null && form === null ? hints[tool].first : hints[tool].next;
}
