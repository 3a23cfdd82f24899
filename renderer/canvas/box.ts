import type { Box } from "./viewport.ts";

type Ground = { readonly eastM: number; readonly northM: number };

/** The least box that holds two points of the ground. */
export function boxBetween(one: Ground, other: Ground): Box {
  return {
    westM: Math.min(one.eastM, other.eastM),
    eastM: Math.max(one.eastM, other.eastM),
    southM: Math.min(one.northM, other.northM),
    northM: Math.max(one.northM, other.northM),
  };
}

/** A box with so much more ground on every side, m. */
export function grownBox({ westM, southM, eastM, northM }: Box, byM: number): Box {
  return { westM: westM - byM, southM: southM - byM, eastM: eastM + byM, northM: northM + byM };
}

/** Whether two boxes have ground in common, an edge included. */
export function meets(one: Box, other: Box): boolean {
  return (
    one.westM <= other.eastM && one.eastM >= other.westM && one.southM <= other.northM && one.northM >= other.southM
  );
}

/** The least box that holds two; null is no box. */
export function boxOfBoth(one: Box | null, other: Box | null): Box | null {
  if (!one || !other) return one ?? other;
  return {
    westM: Math.min(one.westM, other.westM),
    eastM: Math.max(one.eastM, other.eastM),
    southM: Math.min(one.southM, other.southM),
    northM: Math.max(one.northM, other.northM),
  };
}
