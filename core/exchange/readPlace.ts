import { readNumber } from "./cellValue.ts";
import type { RowReader } from "./rowReader.ts";

/** Where a row stands: on the globe (WGS 84), or on the local grid of its file. */
export type Place =
  | { readonly system: "lonLat"; readonly lonDeg: number; readonly latDeg: number }
  | { readonly system: "grid"; readonly eastM: number; readonly northM: number };

/**
 * Reads a row's place: longitude and latitude where both have a column, else grid columns. Null where it cannot be read, which
 * is then reported in the row; so is a longitude and latitude that stand in each other's column.
 */
export function readPlace(row: RowReader): Place | null {
  return row.has("lon") && row.has("lat") ? readLonLat(row) : readGrid(row);
}

function readLonLat(row: RowReader): Place | null {
  const lonDeg = row.value("lon", readNumber);
  const latDeg = row.value("lat", readNumber);
  if (lonDeg === null || latDeg === null) {
    if (row.text("lon") === "" || row.text("lat") === "")
      row.refuse("lon", "The row has no place.", "longitude and latitude in degrees");
    return null;
  }
  if (Math.abs(latDeg) > 90 && Math.abs(latDeg) <= 180 && Math.abs(lonDeg) <= 90) {
    row.refuse(
      "lat",
      `A latitude of ${latDeg} cannot be; longitude and latitude seem to be swapped.`,
      "latitude from -90 to 90: match the other column, or swap them in the file",
    );
    return null;
  }
  if (Math.abs(lonDeg) > 180) row.refuse("lon", "The longitude is not on the globe.", "degrees from -180 to 180");
  if (Math.abs(latDeg) > 90) row.refuse("lat", "The latitude is not on the globe.", "degrees from -90 to 90");
  if (lonDeg === 0 && latDeg === 0)
    row.refuse("lon", "0, 0 stands for a place nobody measured.", "the pole's or unit's own place");
  return row.bad.length > 0 ? null : { system: "lonLat", lonDeg, latDeg };
}

function readGrid(row: RowReader): Place | null {
  const eastM = row.lengthM("east");
  const northM = row.lengthM("north");
  if (eastM === null || northM === null) {
    if (row.text("east") === "" || row.text("north") === "")
      row.refuse("east", "The row has no place.", "east and north");
    return null;
  }
  return { system: "grid", eastM, northM };
}
