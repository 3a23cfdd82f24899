import type { ImportKind } from "./importOptions.ts";

/** What the cells of a field hold. */
export type ValueKind =
  | "text"
  /** Names a row: a column whose cells repeat is unlikely to be it. */
  | "tag"
  /** Names a building, and never its kind. */
  | "buildingName"
  | "number"
  | "length"
  | "poleLength"
  | "count"
  | "yesNo"
  | "volts"
  | "unitKind"
  | "attachmentKind"
  | "surface";

/** One thing an import can take from a column. */
export type ImportField = {
  readonly field: string;
  readonly title: string;
  readonly required: boolean;
  readonly kind: ValueKind;
  /** Headings people write for it, likeliest first; case, blanks and punctuation do not count. */
  readonly titles: readonly string[];
};

const lon = optional("lon", "Longitude", "number", ["lon", "longitude", "long", "lng", "lon deg", "gps lon", "経度"]);
const lat = optional("lat", "Latitude", "number", ["lat", "latitude", "lat deg", "gps lat", "緯度"]);
const east = optional("east", "East", "length", ["east", "easting", "x", "x coord", "x coordinate", "point x"]);
const north = optional("north", "North", "length", ["north", "northing", "y", "y coord", "y coordinate", "point y"]);
const note = optional("note", "Note", "text", [
  "note",
  "notes",
  "remark",
  "remarks",
  "comment",
  "comments",
  "description",
]);
const otherTags = optional("otherTags", "Packed tags", "text", ["other tags"]);
const place = [lon, lat, east, north];

const tagTitles = [
  "tag",
  "pole tag",
  "pole",
  "pole number",
  "pole no",
  "pole num",
  "pole id",
  "pole name",
  "structure id",
  "structure",
];
const fromTitles = ["from pole", "from", "from tag", "pole from", "pole a", "a pole", "start pole"];
const toTitles = ["to pole", "to", "to tag", "pole to", "pole b", "b pole", "end pole"];

/** The fields of every import, in the order a person maps them. */
export const importFields: Readonly<Record<ImportKind, readonly ImportField[]>> = {
  pole: [
    optional("tag", "Tag", "tag", [...tagTitles, "number", "name", "ref", "id", "fid", "object id", "asset id"]),
    ...place,
    optional("ground", "Ground elevation", "length", [
      "ground elevation",
      "ground",
      "elevation",
      "elev",
      "ground elev",
      "z",
    ]),
    optional("aboveGround", "Height above ground", "length", [
      "above ground",
      "height above ground",
      "above ground height",
      "agl",
      "height agl",
    ]),
    optional("poleLength", "Pole length", "poleLength", [
      "height",
      "pole height",
      "length",
      "pole length",
      "ht",
      "pole ht",
      "size",
      "pole size",
      "height class",
      "pole height class",
      "ht cl",
      "hgt",
    ]),
    optional("poleClass", "Class", "text", ["class", "pole class", "cl", "pole cl"]),
    optional("owner", "Owner", "text", ["owner", "pole owner", "owned by", "ownership", "company"]),
    optional("line", "Line", "text", ["line", "line name", "lateral", "run", "feeder", "route"]),
    optional("order", "Order along the line", "count", [
      "order",
      "sequence",
      "seq",
      "pole order",
      "station number",
      "sort",
    ]),
    optional("fromTag", "Pole its line starts from", "text", [
      "from",
      "from pole",
      "from tag",
      "starts from",
      "previous pole",
    ]),
    optional("terminalAllowed", "Terminal allowed", "yesNo", [
      "terminal allowed",
      "terminals allowed",
      "attach allowed",
    ]),
    note,
    otherTags,
  ],
  livingUnit: [
    optional("address", "Address", "text", [
      "address",
      "full address",
      "full addr",
      "street address",
      "addr",
      "address full",
      "addr full",
      "site address",
      "name",
    ]),
    optional("houseNumber", "House number", "text", [
      "house number",
      "addr housenumber",
      "number",
      "street number",
      "st num",
      "house no",
      "addr num",
      "stnm",
      "街区符号・地番",
    ]),
    optional("houseName", "House name", "text", ["house name", "addr housename", "building name"]),
    optional("street", "Street", "text", [
      "street",
      "addr street",
      "street name",
      "stname",
      "road",
      "road name",
      "大字・町丁目名",
    ]),
    optional("unit", "Unit", "text", [
      "unit",
      "addr unit",
      "apt",
      "apartment",
      "suite",
      "unit number",
      "apt number",
      "unit no",
    ]),
    ...place,
    optional("kind", "Kind", "unitKind", [
      "kind",
      "type",
      "unit type",
      "use",
      "land use",
      "building type",
      "class",
      "building",
    ]),
    optional("building", "Building", "buildingName", ["building", "bldg id", "building id", "bldg", "building no"]),
    optional("attachHeight", "Attachment height on the building", "length", [
      "attach height",
      "attachment height",
      "drop height",
      "eave height",
      "height",
    ]),
    note,
    otherTags,
  ],
  spanPair: [
    required("fromTag", "From pole", "text", fromTitles),
    required("toTag", "To pole", "text", toTitles),
    optional("length", "Length", "length", ["length", "span length", "distance", "span", "dist"]),
    note,
  ],
  attachment: [
    required("tag", "Pole", "text", tagTitles),
    optional("owner", "Owner", "text", ["owner", "attacher", "company", "owned by", "party"]),
    required("kind", "Kind", "attachmentKind", ["kind", "type", "attachment", "attachment type", "wire", "equipment"]),
    required("height", "Height above ground", "length", [
      "height",
      "attach height",
      "attachment height",
      "height above ground",
      "ht",
      "agl",
    ]),
    optional("voltage", "Voltage to ground", "volts", ["voltage", "volts", "voltage to ground", "v"]),
    note,
  ],
  crossing: [
    required("fromTag", "From pole", "text", fromTitles),
    required("toTag", "To pole", "text", toTitles),
    required("offset", "Distance from the first pole", "length", [
      "offset",
      "distance",
      "distance from first pole",
      "dist",
      "at",
      "station",
      "distance from pole",
    ]),
    required("surface", "Surface", "surface", ["surface", "kind", "type", "crossing", "crossing type"]),
    required("width", "Width", "length", ["width", "crossing width"]),
    optional("surfaceElevation", "Surface elevation", "length", [
      "surface elevation",
      "elevation",
      "surface elev",
      "elev",
    ]),
    optional("name", "Name", "text", ["name", "crossing name", "road name", "road", "street"]),
  ],
};

function required(field: string, title: string, kind: ValueKind, titles: readonly string[]): ImportField {
  return { field, title, required: true, kind, titles };
}

function optional(field: string, title: string, kind: ValueKind, titles: readonly string[]): ImportField {
  return { field, title, required: false, kind, titles };
}
