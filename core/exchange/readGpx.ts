import { fail, ok, type Result } from "../model/result.ts";
import type { BadRow } from "./badRow.ts";
import { decimalDegrees } from "./decimalDegrees.ts";
import { pointOfGeometry } from "./geometryPoint.ts";
import { type PlacedRow, placedTable } from "./placedRows.ts";
import { type Table, tableLimits } from "./table.ts";
import { walkXml } from "./walkXml.ts";

/**
 * Reads the waypoints of GPX into a table: one row a waypoint, its place as `lon` and `lat`, then what it says of itself as columns.
 * Elevations stand under `ele_m`, which no import takes for the ground by itself: a receiver's may be metres off. Tracks and routes
 * are passed over, and that is noted.
 *
 * Refuses with "not-xml", "empty-table" or as makeTable does.
 *
 * @param name name of the file, for messages
 * @param text the whole file
 * @source GPX 1.1 schema, wptType; from memory. Places are WGS 84, elevations metres
 */
export function readGpx(name: string, text: string): Result<Table> {
  const read = waypoints(name, text);
  if (!read.ok) return read;
  const { rows, bad, count, otherCount } = read.value;
  if (count === 0)
    return fail(
      "empty-table",
      `The file has no waypoints${otherCount > 0 ? "; its tracks and routes are not read" : ""}.`,
      name,
      "Export the poles or houses as waypoints.",
    );
  const notes = [
    ...(otherCount > 0 ? [`${otherCount} tracks or routes are passed over: only waypoints are read.`] : []),
    ...(rows.some((row) => row.values.has("ele_m"))
      ? ["Elevations (ele_m) are a receiver's; match them to the ground only where they are good enough."]
      : []),
  ];
  return placedTable({ name, lineWord: "waypoint", bad, notes }, rows, count);
}

/** Headings of what the schema abbreviates. */
const headings: Readonly<Record<string, string>> = { desc: "description", cmt: "comment", ele: "ele_m" };

type Waypoints = {
  readonly rows: readonly PlacedRow[];
  readonly bad: readonly BadRow[];
  readonly count: number;
  readonly otherCount: number;
};

function waypoints(name: string, text: string): Result<Waypoints> {
  const rows: PlacedRow[] = [];
  const bad: BadRow[] = [];
  let count = 0;
  let otherCount = 0;
  let lon = "";
  let lat = "";
  let values = new Map<string, string>();
  const end = (): void => {
    count += 1;
    if (count > tableLimits.rowCount) return;
    const place = pointOfGeometry({ type: "Point", coordinates: [decimalDegrees(lon), decimalDegrees(lat)] });
    if (place.ok) rows.push({ line: count, point: place.point, values });
    else
      bad.push({
        file: name,
        line: count,
        column: "lat, lon",
        value: `${lat}, ${lon}`.slice(0, 80),
        what: place.what,
        accepted: "latitude and longitude in decimal degrees",
      });
  };
  const walked = walkXml(name, text, {
    open(element, attributeOf) {
      if (element === "trk" || element === "rte") otherCount += 1;
      if (element !== "wpt") return;
      lon = attributeOf("lon");
      lat = attributeOf("lat");
      values = new Map();
    },
    close(element, told, parents) {
      if (element === "wpt") end();
      else if (told !== "" && parents.includes("wpt") && !parents.includes("link")) {
        const heading = Object.hasOwn(headings, element) ? (headings[element] ?? element) : element;
        if (!values.has(heading)) values.set(heading, told);
      }
    },
  });
  return walked.ok ? ok({ rows, bad, count, otherCount }) : walked;
}
