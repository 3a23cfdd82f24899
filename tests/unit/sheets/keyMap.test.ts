import fc from "fast-check";
import { expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import type { Book } from "../../../core/sheets/book.ts";
import { keyMap } from "../../../core/sheets/keyMap.ts";
import type { Mark } from "../../../core/sheets/paper/displayList.ts";
import type { PaperBox } from "../../../core/sheets/paper/paper.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const box: PaperBox = { left: 100, bottom: 80, right: 280, top: 250 };
const book: Book = { numberOf: () => "1", sheets: [], openFindings: [] };

/** The small route drawn out to so many times its length. */
const stretched = (times: number, unitSystem: "us" | "metric") => {
  const route = smallRoute({ settings: { unitSystem } });
  const pole = new Map(
    [...route.pole].map(([id, one]) => [id, { ...one, eastM: one.eastM * times, northM: one.northM * times }]),
  );
  return openPlant({ ...route, pole });
};

it("the map of a route of any length keeps to its box, its scale bar too", () => {
  const times = fc.double({ min: 1, max: 5_000, noNaN: true });
  fc.assert(
    fc.property(times, fc.constantFrom("us" as const, "metric" as const), (many, system) => {
      const { marks } = keyMap(stretched(many, system), [], book, box);
      for (const [x, y] of marks.flatMap(pointsOf)) {
        expect(x >= box.left && x <= box.right && y >= box.bottom && y <= box.top).toBe(true);
      }
    }),
    { numRuns: 40 },
  );
});

function pointsOf(mark: Mark) {
  if (mark.kind === "line") return mark.pointsMm;
  return mark.kind === "text" ? [mark.atMm] : mark.kind === "arc" ? [mark.centreMm] : [];
}
