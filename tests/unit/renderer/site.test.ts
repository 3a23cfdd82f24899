import { describe, expect, test } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { hitAll, refsWithin, screenPoint } from "../../../renderer/canvas/hitTest.ts";
import { placesOf } from "../../../renderer/canvas/places.ts";
import { guyMarks } from "../../../renderer/canvas/siteMarks.ts";
import { groundAt } from "../../../renderer/canvas/viewport.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { pictureOf } from "./pictureOf.ts";

/** The small route with a guy at its first pole, a building left of span 2, a sign under span 3, and a measured point. */
function builtUp(): Route {
  const [strandTypeId = ""] = smallRoute().strandType.keys();
  const guy = { id: "guy-1", poleId: "pole-1", strandTypeId, heightM: 6, leadM: 5, directionRad: Math.PI, note: "" };
  const stands = { name: "", offsetM: 20, lengthM: 10, heightM: 4, bottomM: null, side: "left" as const };
  return withRows(
    withRows(smallRoute(), "guy", [{ ...guy, anchorN: null }], "structure", [
      { ...stands, id: "house-1", spanId: "span-2", kind: "building", besideM: 8 },
      { ...stands, id: "sign-1", spanId: "span-3", kind: "sign", besideM: 0 },
    ]),
    "groundPoint",
    [{ id: "ground-1", spanId: "span-2", offsetM: 30, groundM: 99 }],
  );
}

const plant = openPlant(builtUp());
const near = pictureOf(plant, 5);

describe("guys, structures and ground points on the diagram", () => {
  test.each(["guy/guy-1", "structure/house-1", "structure/sign-1", "groundPoint/ground-1"] as const)(
    "a click on %s chooses it",
    (ref) => {
      const point = screenPoint(near, ref);
      if (!point) throw new Error(`${ref} is not drawn`);
      expect(hitAll(near, point[0], point[1])[0]).toBe(ref);
    },
  );

  test("the anchor is drawn where it stands, at the lead of the guy in its direction", () => {
    const [x = 0, y = 0] = screenPoint(near, "guy/guy-1") ?? [];
    const { eastM, northM } = groundAt(near.view, x, y);
    const pole = plant.rowOf("pole", "pole-1");
    expect(eastM).toBeCloseTo(pole.eastM - 5, 6);
    expect(northM).toBeCloseTo(pole.northM, 6);
  });

  test("a building left of the line is drawn left of it, as far as it stands", () => {
    const [x = 0, y = 0] = screenPoint(near, "structure/house-1") ?? [];
    const from = plant.rowOf("pole", plant.rowOf("span", "span-2").fromPoleId);
    const to = plant.rowOf("pole", plant.rowOf("span", "span-2").toPoleId);
    const { eastM, northM } = groundAt(near.view, x, y);
    const [east, north] = [to.eastM - from.eastM, to.northM - from.northM];
    const leftM = (east * (northM - from.northM) - north * (eastM - from.eastM)) / Math.hypot(east, north);
    expect(leftM).toBeGreaterThan(8);
    expect(leftM).toBeLessThan(10);
  });

  test("in the middle of a sign that the line passes over the span is meant", () => {
    const mark = near.scene.structures.marks.find((one) => one.id === "sign-1");
    if (!mark) throw new Error("the sign is not drawn");
    const x = (mark.eastM - near.view.centreEastM) * near.view.pxPerM + near.view.widthPx / 2;
    const y = near.view.heightPx / 2 - (mark.northM - near.view.centreNorthM) * near.view.pxPerM;
    expect(hitAll(near, x, y)[0]).toBe("span/span-3");
  });

  test("a box takes those whose place lies in it, a guy by its anchor; from afar none, since none is drawn", () => {
    const around = { westM: -1000, eastM: 1000, southM: -1000, northM: 1000 };
    const site = (px: number) =>
      refsWithin(pictureOf(plant, px), around).filter((ref) => /^(guy|structure|groundPoint)/.test(ref));
    expect(site(5)).toEqual([
      "guy/guy-1",
      "guy/guy-4",
      "structure/house-1",
      "structure/sign-1",
      "groundPoint/ground-1",
    ]);
    expect(site(0.5)).toEqual([]);
    const { eastM, northM } = plant.rowOf("pole", "pole-1");
    const atPole = { westM: eastM - 1, eastM: eastM + 1, southM: northM - 1, northM: northM + 1 };
    expect(refsWithin(near, atPole)).not.toContain("guy/guy-1");
  });

  test("on a straightened page a guy keeps its angle to the line", () => {
    const places = placesOf(plant, "scale");
    const [mark] = guyMarks(plant, places).marks;
    if (!mark) throw new Error("no guy");
    const { from, to } = places.spanEnds("span-1");
    const [ax, ay] = [mark.anchorEastM - mark.eastM, mark.anchorNorthM - mark.northM];
    const [sx, sy] = [to.eastM - from.eastM, to.northM - from.northM];
    const onPage = Math.atan2(ax * sy - ay * sx, ax * sx + ay * sy);
    const ends = ["pole-1", "pole-2"].map((id) => plant.rowOf("pole", id));
    const spanRad = Math.atan2(
      (ends[1]?.northM ?? 0) - (ends[0]?.northM ?? 0),
      (ends[1]?.eastM ?? 0) - (ends[0]?.eastM ?? 0),
    );
    expect(Math.cos(onPage)).toBeCloseTo(Math.cos(spanRad - Math.PI), 6);
  });
});
