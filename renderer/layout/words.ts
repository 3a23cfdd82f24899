import type { UnservedUnit } from "../../core/model/tables.ts";

const kinds: Readonly<Record<UnservedUnit["kind"], string>> = {
  reach: "out of reach",
  noStrand: "no strand",
  forbidden: "no place allowed",
  crossing: "forbidden crossing",
  capacity: "all full",
  fibers: "too few fibers",
};

/** Words of the layout panel. */
export const layoutWords = {
  title: "Layout",
  show: "Show how the layout came out",
  hide: "Put the layout away",
  close: "Put away",
  timeLimit: "Search for at most, s",
  asUsual: "as usual",
  timeWhy:
    "Left empty, steps are counted and every machine comes to the same layout. With a time, a slower one may come to another.",
  none: "No layout of the whole route is known: lay it out for its cost and its bound.",
  latest: "How it came out",
  stale: "The route was changed since. Lay it out again for figures that hold.",
  terminals: "Terminals",
  served: "Living units served",
  servedOf: (served: number, all: number): string => `${served} of ${all}`,
  cost: "Cost of what was hung",
  bound: "Proven: none costs less than",
  gap: "Gap",
  noBound: "not known, for want of fibers",
  costWhy: "Terminals and drops at catalogue prices; pinned terminals cost nothing more.",
  unserved: (count: number): string => `Not served: ${count}`,
  everyone: "Everyone is served.",
  decided: "Decided by hand",
  pinnedTerminals: "Pinned terminals",
  pinnedUnits: "Pinned living units",
  barredPoles: "Poles where nothing may hang",
  choose: (name: string, count: number): string => `Choose all: ${name}, ${count}`,
  decidedHow: (pin: string, bar: string): string =>
    `${pin} pins or lets go what is chosen, ${bar} closes or opens a chosen pole. No layout moves what is pinned.`,
  previous: "Previous",
  next: "Next",
  unservedList: "Living units that are not served",
  kindOf: (kind: UnservedUnit["kind"]): string => kinds[kind],
};
