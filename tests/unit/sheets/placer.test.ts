import { describe, expect, it } from "vitest";
import { cornersOf, outlinesTouch } from "../../../core/sheets/paper/orientedBox.ts";
import { openPlacer } from "../../../core/sheets/paper/placer.ts";

const at = (x: number, y: number, cost = 0) => ({ centre: [x, y] as const, turnRad: 0, cost });

describe("placing labels", () => {
  it("takes the best free place and no leader", () => {
    const placer = openPlacer([0, 0, 100, 100]);
    const placed = placer.place({ width: 10, height: 3, anchor: [50, 50], candidates: [at(50, 45, 1), at(50, 55, 0)] });
    expect(placed?.box.centre).toEqual([50, 55]);
    expect(placed?.leader).toBeNull();
  });

  it("prefers a place that no drop runs through", () => {
    const placer = openPlacer([0, 0, 100, 100]);
    placer.line([40, 55], [60, 55]);
    const placed = placer.place({
      width: 10,
      height: 3,
      anchor: [50, 50],
      candidates: [at(50, 55, 0), at(50, 45, 0.5)],
    });
    expect(placed?.box.centre).toEqual([50, 45]);
  });

  it("moves a label away from a crowd and leads it back to its anchor", () => {
    const placer = openPlacer([0, 0, 100, 100]);
    placer.block(cornersOf({ centre: [50, 50], width: 20, height: 20, turnRad: 0 }));
    const placed = placer.place({ width: 10, height: 3, anchor: [50, 50], candidates: [at(50, 55)] });
    expect(placed?.leader?.[1]).toEqual([50, 50]);
  });

  it("never lays one of many labels of one anchor over another, and gives up where the paper is full", () => {
    const placer = openPlacer([0, 0, 40, 40]);
    const boxes = Array.from({ length: 60 }, () =>
      placer.place({ width: 9, height: 4, anchor: [20, 20], candidates: [at(20, 20)] }),
    );
    const outlines = boxes.flatMap((one) => (one ? [cornersOf(one.box)] : []));
    expect(outlines.length).toBeGreaterThan(5);
    expect(boxes).toContain(null);
    const touching = outlines.flatMap((a, index) => outlines.slice(index + 1).filter((b) => outlinesTouch(a, b)));
    expect(touching).toEqual([]);
  });
});
