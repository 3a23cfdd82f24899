import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { openSceneMaker } from "../../../renderer/canvas/scene.ts";
import { houseNumber } from "../../../renderer/canvas/unitMarks.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

test("an edit of one living unit leaves poles, spans and terminals as they were drawn", () => {
  const plant = openPlant(smallRoute());
  const makeScene = openSceneMaker(plant);
  const before = makeScene();
  const unit = plant.rowOf("livingUnit", "unit-1");
  const moved = { ...unit, northM: unit.northM + 5 };
  const route = plant.route();
  plant.advance({ ...route, livingUnit: new Map(route.livingUnit).set(unit.id, moved) }, [
    { table: "livingUnit", id: unit.id, before: unit, after: moved },
  ]);
  const after = makeScene();
  expect([after.poles === before.poles, after.spans === before.spans, after.terminals === before.terminals]).toEqual([
    true,
    true,
    true,
  ]);
  expect(after.houses).not.toBe(before.houses);
});

test("a terminal's ticks are its ports: used where a drop is, hollow where it is spare", () => {
  const [mark] = openSceneMaker(openPlant(smallRoute()))().terminals.marks;
  expect(mark?.ticks.map((one) => one.isUsed)).toEqual([true, true, false, false, false, false, false, false]);
});

test("a house is drawn with the number its address starts with", () => {
  expect(["172 Tallow Road", "14B Quern Street, Unit 2", "Mill house"].map(houseNumber)).toEqual([
    "172",
    "14B",
    "Mill house",
  ]);
});
