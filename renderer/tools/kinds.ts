import type { Route } from "../../core/model/route.ts";
import type { TableName } from "../../core/model/tables.ts";
import type { Scene } from "../canvas/scene.ts";
import { kindWords, toolWords } from "./words.ts";

/** Kinds of rows that are drawn by themselves, in the order of the list. */
export const drawnKinds = [
  "pole",
  "guy",
  "span",
  "crossing",
  "structure",
  "groundPoint",
  "terminal",
  "slack",
  "closure",
  "livingUnit",
  "drop",
] as const;
export type DrawnKind = (typeof drawnKinds)[number];

export type KindState = { readonly shown: "full" | "faded" | "hidden"; readonly isLocked: boolean };

/** How each kind is treated on the diagram. */
export type KindStates = Readonly<Record<DrawnKind, KindState>>;

const usual: KindState = { shown: "full", isLocked: false };

/** Everything shown, nothing locked. */
export const usualKinds: KindStates = {
  pole: usual,
  guy: usual,
  span: usual,
  crossing: usual,
  structure: usual,
  groundPoint: usual,
  terminal: usual,
  slack: usual,
  closure: usual,
  livingUnit: usual,
  drop: usual,
};

const layerOf = {
  pole: "poles",
  guy: "guys",
  span: "spans",
  crossing: "crossings",
  structure: "structures",
  groundPoint: "groundPoints",
  terminal: "terminals",
  slack: "coils",
  closure: "closures",
  livingUnit: "houses",
  drop: "drops",
} as const satisfies Record<DrawnKind, keyof Scene>;

const nowhere = { within: () => [] } as const;

/** The scene with hidden kinds found nowhere: they are neither drawn nor met by the pointer. A drop goes with either of its ends. */
export function withoutHidden(scene: Scene, states: KindStates): Scene {
  const isHidden = (kind: DrawnKind): boolean => states[kind].shown === "hidden";
  const isEndHidden = isHidden("terminal") || isHidden("livingUnit");
  const hidden = drawnKinds.filter((kind) => isHidden(kind) || (kind === "drop" && isEndHidden));
  if (hidden.length === 0) return scene;
  const emptied = hidden.map((kind) => [layerOf[kind], { ...scene[layerOf[kind]], index: nowhere }] as const);
  return { ...scene, ...Object.fromEntries(emptied) };
}

/** How strongly a layer of the scene is inked, 0 to 1. */
export function inkFrac(states: KindStates, layer: string): number {
  const kind = drawnKinds.find((one) => layerOf[one] === layer);
  return kind && states[kind].shown === "faded" ? 0.28 : 1;
}

/** Whether rows of a table may be chosen on the diagram. */
export function isShownKind(states: KindStates, table: TableName): boolean {
  const kind = drawnKinds.find((one) => one === table);
  return kind !== undefined && states[kind].shown !== "hidden";
}

/** Why rows of a table may not be moved or taken away, or null where they may. */
export function lockedWords(states: KindStates, table: TableName): string | null {
  const kind = drawnKinds.find((one) => one === table);
  return kind && states[kind].isLocked ? toolWords.locked(kindWords[kind]) : null;
}

/** Rows of a kind on the route. */
export function kindCount(route: Route, kind: DrawnKind): number {
  return route[kind].size;
}
