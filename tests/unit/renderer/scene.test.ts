import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { houseNumber } from "../../../renderer/canvas/houseMarks.ts";
import { openSceneMaker } from "../../../renderer/canvas/scene.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

test("an edit of one living unit leaves poles, spans and terminals as they were drawn", () => {
  const plant = openPlant(smallRoute());
  const makeScene = openSceneMaker(plant);
  const before = makeScene(plant.route());
  const unit = plant.rowOf("livingUnit", "unit-1");
  const moved = { ...unit, northM: unit.northM + 5 };
  const route = plant.route();
  plant.advance({ ...route, livingUnit: new Map(route.livingUnit).set(unit.id, moved) }, [
    { table: "livingUnit", id: unit.id, before: unit, after: moved },
  ]);
  const after = makeScene(plant.route());
  expect([after.poles === before.poles, after.spans === before.spans, after.terminals === before.terminals]).toEqual([
    true,
    true,
    true,
  ]);
  expect(after.houses).not.toBe(before.houses);
});

test("a terminal's ticks are its ports: used where a drop is, hollow where it is spare", () => {
  const [mark] = openSceneMaker(openPlant(smallRoute()))(smallRoute()).terminals.marks;
  expect(mark?.ticks.map((one) => one.isUsed)).toEqual([true, true, false, false, false, false, false, false]);
});

test("a house is drawn with the number its address starts with", () => {
  expect(["172 Tallow Road", "14B Quern Street, Unit 2", "Mill house"].map(houseNumber)).toEqual([
    "172",
    "14B",
    "Mill house",
  ]);
});

test("hanging a terminal finds it by place and leaves the drops as they were", () => {
  const plant = openPlant(smallRoute());
  const makeScene = openSceneMaker(plant);
  const before = makeScene(plant.route());
  const terminal = { ...plant.rowOf("terminal", "terminal-1"), id: "terminal-9", name: "T-9" };
  const route = plant.route();
  plant.advance({ ...route, terminal: new Map(route.terminal).set(terminal.id, terminal) }, [
    { table: "terminal", id: terminal.id, before: null, after: terminal },
  ]);
  const after = makeScene(plant.route());
  const mark = after.terminals.marks.find((one) => one.id === "terminal-9");
  if (!mark) throw new Error("the terminal is not drawn");
  const { eastM, northM } = mark;
  const here = after.terminals.index.within({ westM: eastM, eastM, southM: northM, northM });
  expect(here.map((i) => after.terminals.marks[i]?.id)).toContain("terminal-9");
  expect(after.drops.marks).toBe(before.drops.marks);
});

test("a terminal whose row, ports and spans stay keeps its mark when another is hung", () => {
  const plant = openPlant(smallRoute());
  const makeScene = openSceneMaker(plant);
  const [before] = makeScene(plant.route()).terminals.marks;
  const terminal = { ...plant.rowOf("terminal", "terminal-1"), id: "terminal-9", name: "T-9" };
  const route = plant.route();
  plant.advance({ ...route, terminal: new Map(route.terminal).set(terminal.id, terminal) }, [
    { table: "terminal", id: terminal.id, before: null, after: terminal },
  ]);
  expect(makeScene(plant.route()).terminals.marks[0]).toBe(before);
});

test("a drop is found wherever it runs, not only where its house stands", () => {
  const { drops, terminals, houses } = openSceneMaker(openPlant(smallRoute()))(smallRoute());
  drops.marks.forEach(({ terminal, house }, i) => {
    const [from, to] = [terminals.marks[terminal], houses.marks[house]];
    if (!from || !to) throw new Error("a drop hangs between nothing");
    const [eastM, northM] = [(from.eastM + to.eastM) / 2, (from.northM + to.northM) / 2];
    expect(drops.index.within({ westM: eastM, eastM, southM: northM, northM })).toContain(i);
  });
  expect(drops.marks.length).toBeGreaterThan(0);
});
