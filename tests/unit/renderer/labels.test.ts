import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { layOutLabels, type PlacedLabel } from "../../../renderer/canvas/labels.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { estateRoute } from "../../fixtures/sheets/estateRoute.ts";
import { pictureOf } from "./pictureOf.ts";

const measure = (text: string, sizePx: number): number => text.length * sizePx * 0.58;

/** Points over a label's plate, close enough that two plates that lie on each other share ground. */
function pointsOn(label: PlacedLabel): readonly (readonly [number, number])[] {
  const width = measure(label.text, label.sizePx);
  const height = label.sizePx - 1;
  const points: [number, number][] = [];
  for (let i = 0; i <= 24; i += 1) {
    for (const across of [-0.5, 0, 0.5]) {
      const along = (i / 24 - 0.5) * width;
      const down = across * height;
      points.push([
        label.x + along * Math.cos(label.turnRad) - down * Math.sin(label.turnRad),
        label.y + along * Math.sin(label.turnRad) + down * Math.cos(label.turnRad),
      ]);
    }
  }
  return points;
}

function liesOn(label: PlacedLabel, [x, y]: readonly [number, number]): boolean {
  const dx = x - label.x;
  const dy = y - label.y;
  const along = Math.abs(dx * Math.cos(label.turnRad) + dy * Math.sin(label.turnRad));
  const across = Math.abs(dy * Math.cos(label.turnRad) - dx * Math.sin(label.turnRad));
  // what is nearer than a bucket's half may touch
  return along < measure(label.text, label.sizePx) / 2 - 2.5 && across < (label.sizePx - 1) / 2 - 2.5;
}

test.each([
  [1.4, 1],
  [2.5, 1],
  [6, 1],
  [6, 1.5],
  [6, 2],
])("no label lies on another at %s px to the metre, with letters %s times the usual size", (pxPerM, letterFrac) => {
  const usual = pictureOf(openPlant(estateRoute()), pxPerM);
  const labels = layOutLabels({ ...usual, ink: { ...usual.ink, letterFrac } }, measure);
  expect(Math.max(...labels.map((one) => one.sizePx))).toBe(12 * letterFrac);
  expect(labels.length).toBeGreaterThan(10);
  const clashes = labels.flatMap((one, i) =>
    labels.slice(i + 1).filter((other) => pointsOn(other).some((point) => liesOn(one, point))),
  );
  expect(clashes).toEqual([]);
});

test("on an open line every pole's tag, every terminal's name and every span's length find room", () => {
  const texts = layOutLabels(pictureOf(openPlant(smallRoute()), 4), measure).map((one) => one.text);
  expect(texts).toEqual(expect.arrayContaining(["P1", "P2", "P3", "P4", "148 ft"]));
  expect(texts.filter((text) => text === "148 ft")).toHaveLength(3);
});
