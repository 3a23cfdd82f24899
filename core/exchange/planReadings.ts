import { readingNamed, thingNamed } from "../closeout/readingNames.ts";
import { builtKindWords } from "../closeout/words.ts";
import type { BuiltKind, ReadingKind } from "../model/closeoutRows.ts";
import type { Plant } from "../plant/plant.ts";
import { parseLengthM } from "../units/parseLength.ts";
import { type BadRow, shownValue } from "./badRow.ts";
import type { Table } from "./table.ts";

/** Headings of a list of readings, as they are asked for. */
const headings = ["kind", "name", "port", "along", "reading", "value", "nm", "by", "date"] as const;
type Heading = (typeof headings)[number];

/** Whoever brings the list: for rows that do not say who read and when. */
type Signed = { readonly by: string; readonly atIso: string };

/** What a list of readings would do: an input of `reading.take` for each row, and every row that cannot be taken. */
export type PlannedReadings = { readonly inputs: readonly unknown[]; readonly bad: readonly BadRow[] };

/** Works out a list of readings, a row each: what thing by its name, what was read, the figure with its unit. */
export function planReadings(plant: Plant, table: Table, signed: Signed): PlannedReadings {
  const columns = new Map(table.headings.map((one, at) => [one.trim().toLowerCase(), at]));
  const lacking = ["kind", "name", "reading", "value"].filter((one) => !columns.has(one));
  if (lacking.length > 0) return { inputs: [], bad: [badHeadings(table, lacking)] };
  const bad: BadRow[] = [...table.bad];
  const inputs = table.rows.flatMap(({ line, cells }) => {
    const cell = (one: Heading): string => (cells[columns.get(one) ?? -1] ?? "").trim();
    const read = readRow(plant, cell, signed);
    if (!("column" in read)) return [read];
    const { column, what, accepted } = read;
    bad.push({ file: table.name, line, column, value: shownValue(cell(column)), what, accepted });
    return [];
  });
  return { inputs, bad };
}

type Cell = (one: Heading) => string;
type Wrong = { readonly column: Heading; readonly what: string; readonly accepted: string };

function readRow(plant: Plant, cell: Cell, signed: Signed): object | Wrong {
  const kind = kinds.find((one) => builtKindWords[one].one === cell("kind").toLowerCase());
  if (!kind)
    return wrong("kind", "There is no such kind of thing.", kinds.map((one) => builtKindWords[one].one).join(", "));
  const what = readingNamed(kind, cell("reading"));
  if (!what)
    return wrong(
      "reading",
      `That is not read of a ${builtKindWords[kind].one}.`,
      "a reading of the closeout's forms, such as offset or power",
    );
  const port = cell("port") === "" ? 0 : Number(cell("port"));
  if (kind === "port" && !(Number.isInteger(port) && port >= 1))
    return wrong("port", "A port has a number.", "1 and up");
  const subject = thingNamed(plant, kind, { name: cell("name"), port, along: cell("along") });
  if (!subject)
    return wrong(
      "name",
      `The route has no ${builtKindWords[kind].one} of this name, or several.`,
      "the name as it is drawn; where several share it, the cable or strand under along",
    );
  const wavelengthNm = cell("nm") === "" ? 0 : Number(cell("nm"));
  if (!(Number.isInteger(wavelengthNm) && wavelengthNm >= 0))
    return wrong("nm", "That is no wavelength.", "nanometres, such as 1490");
  if (what === "power" && wavelengthNm === 0)
    return wrong("nm", "Light is read at a wavelength.", "nanometres, such as 1490");
  const value = readValue(plant, what, cell("value"));
  if ("wrong" in value) return wrong("value", value.wrong, value.accepted);
  return { ...subject, what, wavelengthNm, ...value, by: cell("by") || signed.by, atIso: cell("date") || signed.atIso };
}

const kinds: readonly BuiltKind[] = ["pole", "terminal", "closure", "port", "drop", "bond"];

function wrong(column: Heading, what: string, accepted: string): Wrong {
  return { column, what, accepted };
}

type ReadValue =
  | { readonly value: number | null; readonly text: string }
  | { readonly wrong: string; readonly accepted: string };

function readValue(plant: Plant, what: ReadingKind, text: string): ReadValue {
  if (text === "")
    return { wrong: "Nothing was read.", accepted: "a figure or words; leave the row out where nobody looked" };
  if (what === "houseTag" || what === "note") return { value: null, text };
  if (what === "offset" || what === "slack" || what === "height") {
    const length = parseLengthM(text, plant.settings().unitSystem);
    return length.ok
      ? { value: length.valueM, text: "" }
      : { wrong: length.what, accepted: `36 in, 20 ft, 18' 2" or 0.91 m` };
  }
  if (what === "continuity" && /^(yes|no)$/i.test(text))
    return { value: text.toLowerCase() === "yes" ? 1 : 0, text: "" };
  const value = Number(text.replace(/\s*(dBm|ohms?|Ω)$/i, "").replace("\u2212", "-"));
  const isWhole = what === "portOfDrop" ? Number.isInteger(value) && value >= 1 : true;
  const isKnown = what === "continuity" ? value === 0 || value === 1 : Number.isFinite(value) && isWhole;
  return isKnown
    ? { value, text: "" }
    : { wrong: "That is no such figure.", accepted: acceptedFigures[what] ?? "a number" };
}

const acceptedFigures: Partial<Readonly<Record<ReadingKind, string>>> = {
  continuity: "yes or no",
  portOfDrop: "a port's number",
  power: "dBm, such as -19.4",
  resistance: "ohm, such as 12",
};

function badHeadings(table: Table, lacking: readonly string[]): BadRow {
  return {
    file: table.name,
    line: 1,
    column: "",
    value: table.headings.join(", "),
    what: `The list has no column for ${lacking.join(", ")}.`,
    accepted: `a row of headings with ${headings.join(", ")}`,
  };
}
