import { fromTitles, type ImportField, optional, required, tagTitles, toTitles } from "./importField.ts";

const spanEnds = [required("fromTag", "From pole", "text", fromTitles), required("toTag", "To pole", "text", toTitles)];

const offset = required("offset", "Distance from the first pole", "length", [
  "offset",
  "distance",
  "distance from first pole",
  "dist",
  "at",
  "distance from pole",
]);

/** Measured points of the ground under spans. */
export const groundPointFields: readonly ImportField[] = [
  ...spanEnds,
  offset,
  required("elevation", "Elevation", "length", ["elevation", "ground elevation", "ground", "elev", "ground elev", "z"]),
];

/** Buildings and signs beside and under spans. */
export const structureFields: readonly ImportField[] = [
  ...spanEnds,
  offset,
  required("kind", "What", "structureKind", ["kind", "what", "type", "structure", "structure type"]),
  required("along", "Along the span", "length", ["along", "along the span", "length", "width"]),
  required("beside", "Beside the line", "length", ["beside", "beside the line", "offset from line", "clear of line"]),
  optional("side", "Side", "side", ["side"]),
  required("top", "Top above ground", "length", ["top", "top above ground", "height", "height above ground"]),
  optional("bottom", "Underside above ground", "length", [
    "underside",
    "bottom",
    "underside above ground",
    "clear below",
  ]),
  optional("name", "Name", "text", ["name", "structure name", "building", "address"]),
];

/** Guys and their anchors. */
export const guyFields: readonly ImportField[] = [
  required("tag", "Pole", "text", tagTitles),
  optional("strand", "Strand", "text", ["strand", "guy strand", "guy size", "size", "guy", "wire"]),
  required("height", "Height above ground", "length", ["height", "attach height", "attachment height", "guy height"]),
  required("lead", "Lead", "length", ["lead", "guy lead", "lead length", "anchor distance", "distance"]),
  required("bearing", "Bearing, degrees from north", "number", ["bearing", "azimuth", "direction", "heading"]),
  optional("anchor", "Anchor holds", "force", ["anchor holds", "anchor", "anchor capacity", "holding power"]),
  optional("note", "Note", "text", ["note", "notes", "remark", "remarks", "comment"]),
];

/** Measured sags of other parties' wires. */
export const wireSagFields: readonly ImportField[] = [
  ...spanEnds,
  optional("owner", "Owner", "text", ["owner", "company", "party", "owned by"]),
  required("kind", "Wire", "wireKind", ["kind", "wire", "type", "attachment", "attachment type"]),
  required("sag", "Sag at midspan", "length", ["sag", "midspan sag", "sag at midspan"]),
];

/** What drops pass over between a building and the line. */
export const dropCrossingFields: readonly ImportField[] = [
  required("address", "Address", "text", ["address", "living unit", "unit", "full address", "site address"]),
  required("surface", "What is crossed", "dropSurface", ["surface", "crossing", "kind", "type", "what"]),
  required("distance", "Distance from the building", "length", [
    "distance",
    "from building",
    "distance from building",
    "offset",
    "at",
  ]),
  required("width", "Width", "length", ["width", "wide"]),
  optional("surfaceElevation", "Elevation of the surface", "length", ["surface elevation", "elevation", "elev", "z"]),
  optional("name", "Name", "text", ["name", "road name", "description"]),
];
