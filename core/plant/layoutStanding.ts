import type { Route } from "../model/route.ts";
import type { LayoutRecord } from "../model/tables.ts";
import { layoutDigest } from "./layoutDigest.ts";

/** The record of the latest layout of the whole route, where the route is still as it left it; else null. */
export function standingRecord(route: Route): LayoutRecord | null {
  const record = route.layoutRecord.get("layout");
  return record && record.digest === layoutDigest(route) ? record : null;
}
