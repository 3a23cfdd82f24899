import type { Route } from "../model/route.ts";
import { standingRecord } from "../plant/layoutStanding.ts";
import { gapText } from "../units/gapText.ts";
import { moneyText } from "../units/moneyText.ts";

/** How the latest layout came out, as rows of the quantities; one that says so where the route was changed since. */
export function layoutFacts(route: Route): readonly (readonly [string, string, string])[] {
  if (route.layoutRecord.size === 0) return [];
  const record = standingRecord(route);
  if (!record) return [["Layout", "changed by hand since; no bound holds", ""]];
  const { cost, bound, unservedCount } = record;
  const left =
    unservedCount === 0 ? [] : ([["Living units the layout leaves unserved", String(unservedCount), ""]] as const);
  const much = ["Terminals and drops hung, at catalogue prices", moneyText(cost), ""] as const;
  if (bound === null) return [...left, much, ["Layout", "bound not known, for want of fibers", ""]];
  return [
    ...left,
    much,
    ["Proven: no layout costs less than", moneyText(bound), ""],
    ["Layout", gapText(cost, bound), ""],
  ];
}
