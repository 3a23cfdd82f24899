import type { DropMark } from "./dropMarks.ts";
import { terminalPlacePx, tickPitchPx, tickPoint } from "./hungPlace.ts";
import type { Picture } from "./paint.ts";
import { screenX, screenY } from "./viewport.ts";

/** A drop on screen: from its port's tick, or from the middle of the bar where no ticks are drawn, to the house. */
export function dropLine(
  { scene, view, level }: Pick<Picture, "scene" | "view" | "level">,
  drop: DropMark,
): readonly [fromX: number, fromY: number, toX: number, toY: number] | null {
  const terminal = scene.terminals.marks[drop.terminal];
  const house = scene.houses.marks[drop.house];
  if (!terminal || !house) return null;
  const place = terminalPlacePx(terminal, view);
  const tick = level === "labels" ? terminal.ticks[drop.port - 1] : undefined;
  const [x, y] = tick ? tickPoint(place, terminal, tick, tickPitchPx(view)) : [place.x, place.y];
  return [x, y, screenX(view, house.eastM), screenY(view, house.northM)];
}
