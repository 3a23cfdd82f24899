import { fail, type Result } from "../model/result.ts";
import { type BadRow, shownValue } from "./badRow.ts";
import { middleWords } from "./geojsonNotes.ts";
import { type KmlPlacemark, kmlPlacemarks } from "./kmlPlacemarks.ts";
import { type PlacedRow, placedTable } from "./placedRows.ts";
import type { Table } from "./table.ts";

/**
 * Reads KML into a table: one row a placemark, its place as `lon` and `lat`, then its name, its description without markup, its
 * address, the folders it lies in and its extended data as columns. A line, polygon or group is read as one place, as GeoJSON is.
 * A value of the extended data counts before what the placemark says under the same name. A placemark whose coordinates cannot be
 * read is reported and the others are kept.
 *
 * Refuses with "not-xml", "empty-table" or as makeTable does. What the file links to is never fetched.
 *
 * @param name name of the file, for messages
 * @param text the whole file
 * @source OGC 07-147r2, KML 2.2; from memory. Places are WGS 84, longitude first
 */
export function readKml(name: string, text: string): Result<Table> {
  const read = kmlPlacemarks(name, text);
  if (!read.ok) return read;
  const { placemarks, count, linkCount } = read.value;
  if (count === 0) return nothing(name, linkCount);
  const bad: BadRow[] = [];
  const rows: PlacedRow[] = [];
  for (const { line, values, place } of placemarks) {
    if (place === null) rows.push({ line, point: null, values });
    else if (place.ok) rows.push({ line, point: place.point, values });
    else {
      const value = shownValue(values.get("name") ?? "");
      bad.push({ file: name, line, column: "", value, what: place.what, accepted: place.accepted });
    }
  }
  return placedTable({ name, lineWord: "placemark", bad, notes: notesOf(placemarks) }, rows, count);
}

function nothing(name: string, linkCount: number): Result<Table> {
  return fail(
    "empty-table",
    linkCount > 0
      ? "The file has no placemarks of its own; it only links to others, which are not fetched."
      : "The file has no placemarks.",
    name,
    "Save the places themselves as KML or KMZ, with their folders.",
  );
}

function notesOf(placemarks: readonly KmlPlacemark[]): string[] {
  const largeCount = placemarks.filter((one) => one.isLarge).length;
  const otherCount = placemarks.filter(({ place, hasOther }) => place === null && hasOther).length;
  return [
    ...(largeCount > 0 ? [`${largeCount} ${middleWords}.`] : []),
    ...(otherCount > 0 ? [`${otherCount} tracks or models give no place.`] : []),
  ];
}
