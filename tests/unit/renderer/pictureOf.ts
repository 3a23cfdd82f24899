import type { Plant } from "../../../core/plant/plant.ts";
import { levelOf } from "../../../renderer/canvas/level.ts";
import type { Picture } from "../../../renderer/canvas/paint.ts";
import { openSceneMaker } from "../../../renderer/canvas/scene.ts";
import { fitTo, shownBox } from "../../../renderer/canvas/viewport.ts";

const ink = { ground: "#fff", ink: "#000", soft: "#555", hair: "#ccc", wash: "#eee", accent: "#088", letterFrac: 1 };

/** A picture of a route on a screen of 1200 x 800 px, at so many pixels to the metre. */
export function pictureOf(plant: Plant, pxPerM: number): Picture {
  const scene = openSceneMaker(plant)(plant.route());
  const blank = { centreEastM: 0, centreNorthM: 0, pxPerM: 1, widthPx: 1200, heightPx: 800 };
  const view = { ...(scene.box ? fitTo(blank, scene.box, 40) : blank), pxPerM };
  return { scene, view, level: levelOf(view), ink, units: "us", findings: [], shown: shownBox(view, 90) };
}
