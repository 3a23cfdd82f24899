import { lettering } from "./ink.ts";
import { layOutLabels, type PlacedLabel } from "./labels.ts";
import type { Measure } from "./labelWishes.ts";
import type { Pen, Picture } from "./paint.ts";
import { screenX, screenY, shownBox, type Viewport } from "./viewport.ts";

/** How far the view may move before the lettering is laid again, px. */
const reservePx = 240;

/** Draws the lettering of a picture and remembers where it lay, so that it stands still while the view only moves. */
export function openLabelDrawer(measure: Measure): (pen: Pen, picture: Picture) => void {
  let laid: { readonly picture: Picture; readonly labels: readonly PlacedLabel[] } | null = null;
  return (pen, picture) => {
    if (picture.level !== "labels") return;
    if (!laid || !standsStill(laid.picture, picture)) {
      const wide = { ...picture, shown: shownBox(picture.view, reservePx + 80) };
      laid = { picture, labels: layOutLabels(wide, measure) };
    }
    const [dx, dy] = moved(laid.picture.view, picture.view);
    drawAll(pen, laid.labels, dx, dy, picture);
  };
}

function standsStill(before: Picture, now: Picture): boolean {
  const [dx, dy] = moved(before.view, now.view);
  return (
    before.scene === now.scene &&
    before.units === now.units &&
    before.findings === now.findings &&
    before.ink.letterFrac === now.ink.letterFrac &&
    before.view.pxPerM === now.view.pxPerM &&
    before.view.widthPx === now.view.widthPx &&
    before.view.heightPx === now.view.heightPx &&
    Math.max(Math.abs(dx), Math.abs(dy)) < reservePx
  );
}

function moved(before: Viewport, now: Viewport): readonly [number, number] {
  return [
    screenX(now, before.centreEastM) - screenX(before, before.centreEastM),
    screenY(now, before.centreNorthM) - screenY(before, before.centreNorthM),
  ];
}

function drawAll(pen: Pen, labels: readonly PlacedLabel[], dx: number, dy: number, { view, ink }: Picture): void {
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.lineJoin = "round";
  pen.lineWidth = 3;
  pen.strokeStyle = ink.ground;
  for (const label of labels) {
    const x = label.x + dx;
    const y = label.y + dy;
    if (x < -80 || y < -80 || x > view.widthPx + 80 || y > view.heightPx + 80) continue;
    pen.font = lettering(label.sizePx, label.weight);
    pen.fillStyle = label.weight === 600 ? ink.ink : ink.soft;
    if (label.turnRad === 0) {
      pen.strokeText(label.text, x, y);
      pen.fillText(label.text, x, y);
      continue;
    }
    pen.save();
    pen.translate(x, y);
    pen.rotate(label.turnRad);
    pen.strokeText(label.text, 0, 0);
    pen.fillText(label.text, 0, 0);
    pen.restore();
  }
}
