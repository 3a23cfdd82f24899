import type { RefKey } from "../../app/ref.ts";
import { splitRef } from "../../app/ref.ts";

/** Ways to arrange what is chosen, in the order they are offered. */
const arrangeWays = [
  "spaceTerminals",
  "alignTerminals",
  "turnTerminals",
  "evenTerminals",
  "serveFrom",
  "spacePoles",
  "linePoles",
  "hangAlong",
] as const;
export type ArrangeWay = (typeof arrangeWays)[number];

/** What a person has asked for while arranging; nothing is changed until it is carried out. */
export type Arranging = {
  readonly way: ArrangeWay;
  /** Distance from the pole as typed; empty for the company's standard. */
  readonly distance: string;
  /** By how much all drops together may become longer, as typed; empty where the reach alone limits them. */
  readonly longer: string;
  /** A terminal at every so many poles. */
  readonly everyNth: number;
  /** The first pole that gets one, from 1. */
  readonly startAt: number;
  /** The side of the pole away from the cable's feed end, or toward it. */
  readonly side: "beyond" | "before";
  /** Model of hung terminals; null for the route's usual one. */
  readonly modelId: string | null;
};

/** Nothing asked for yet. */
export const plainArranging: Arranging = {
  way: "spaceTerminals",
  distance: "",
  longer: "",
  everyNth: 2,
  startAt: 1,
  side: "beyond",
  modelId: null,
};

/** Ids of the chosen rows of a table, in the order they were chosen. */
export function chosenIds(
  selection: readonly RefKey[],
  table: "pole" | "terminal" | "span" | "drop" | "livingUnit",
): readonly string[] {
  return selection.map(splitRef).flatMap((one) => (one.table === table ? [one.id] : []));
}

/** Ways that have something to arrange in a selection. */
export function waysFor(selection: readonly RefKey[]): readonly ArrangeWay[] {
  const terminalCount = chosenIds(selection, "terminal").length;
  const poleCount = chosenIds(selection, "pole").length;
  const isPlaced = poleCount > 1 || terminalCount > 0 || chosenIds(selection, "span").length > 0;
  const servedCount = chosenIds(selection, "drop").length + chosenIds(selection, "livingUnit").length;
  return arrangeWays.filter((way) => {
    if (way === "evenTerminals") return terminalCount > 1;
    if (way === "serveFrom") return terminalCount === 1 && servedCount > 0;
    if (way === "spaceTerminals") return terminalCount > 2;
    if (way === "hangAlong") return isPlaced;
    return way.endsWith("Terminals") ? terminalCount > 0 : poleCount > 2;
  });
}
