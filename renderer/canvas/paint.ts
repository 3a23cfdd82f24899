import type { Context } from "konva/lib/Context";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import type { WindowFinding } from "../app/routeStore.ts";
import type { Ink } from "./ink.ts";
import type { Level } from "./level.ts";
import type { Scene } from "./scene.ts";
import type { Box, Viewport } from "./viewport.ts";

/** The pen a shape draws with. */
export type Pen = Context;

/** What every part of the diagram is drawn from. */
export type Picture = {
  readonly scene: Scene;
  readonly view: Viewport;
  readonly level: Level;
  readonly ink: Ink;
  readonly units: UnitSystem;
  readonly findings: readonly WindowFinding[];
  /** Ground in view with room for symbols that reach in from outside. */
  readonly shown: Box;
};
