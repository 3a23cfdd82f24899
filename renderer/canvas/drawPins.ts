import { terminalPlacePx } from "./hungPlace.ts";
import { housePx, ringPx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { at } from "./spanMarks.ts";
import { screenX, screenY } from "./viewport.ts";

/** A nail driven in from above: what is pinned stays. From the foot up, px. */
export const nail = { shankPx: 8, headPx: 2.6 } as const;

/** What people decided: a nail in each pinned terminal and living unit, a slash through each pole beside which nothing may hang. */
export function drawPins(pen: Pen, picture: Picture): void {
  const { scene, level, ink, view, shown } = picture;
  if (level === "marks") return;
  const { poles } = scene.pins;
  pen.strokeStyle = ink.ink;
  pen.fillStyle = ink.ink;
  pen.lineWidth = 1.6;
  const feet = nailFeet(picture);
  pen.beginPath();
  for (const [x, y] of feet) {
    pen.moveTo(x, y);
    pen.lineTo(x, y - nail.shankPx);
  }
  pen.stroke();
  pen.beginPath();
  for (const [x, y] of feet) {
    pen.moveTo(x + nail.headPx, y - nail.shankPx);
    pen.arc(x, y - nail.shankPx, nail.headPx, 0, Math.PI * 2);
  }
  pen.fill();
  if (poles.size === 0) return;
  const reach = ringPx(view) + 3.5;
  pen.lineWidth = 1.8;
  pen.beginPath();
  for (const i of scene.poles.index.within(shown)) {
    if (!poles.has(scene.poles.ids[i] ?? "")) continue;
    const x = screenX(view, at(scene.poles.eastM, i));
    const y = screenY(view, at(scene.poles.northM, i));
    pen.moveTo(x - reach, y + reach * 0.8);
    pen.lineTo(x + reach, y - reach * 0.8);
  }
  pen.stroke();
}

type Foot = readonly [x: number, y: number];

/** Where nails stand on screen: beside pinned terminals, in the roofs of houses with a pinned drop. */
export function nailFeet(picture: Picture): readonly Foot[] {
  const { terminals, units } = picture.scene.pins;
  return [...(terminals.size > 0 ? terminalFeet(picture) : []), ...(units.size > 0 ? houseFeet(picture) : [])];
}

function terminalFeet({ scene, view, shown }: Picture): Foot[] {
  return scene.terminals.index.within(shown).flatMap((i): Foot[] => {
    const mark = scene.terminals.marks[i];
    if (!mark || !scene.pins.terminals.has(mark.id)) return [];
    const place = terminalPlacePx(mark, view);
    // the terminal's own coil hangs on the other side
    const aside = -mark.away * (place.widthPx / 2 + 4);
    return [[place.x + mark.frame.alongX * aside, place.y + mark.frame.alongY * aside + 2]];
  });
}

function houseFeet({ scene, view, shown }: Picture): Foot[] {
  const width = housePx(view);
  return scene.houses.index.within(shown).flatMap((i): Foot[] => {
    const house = scene.houses.marks[i];
    if (!house?.unitIds.some((id) => scene.pins.units.has(id))) return [];
    return [[screenX(view, house.eastM) + width * 0.34, screenY(view, house.northM) - width * 0.2]];
  });
}
