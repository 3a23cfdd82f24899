import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { nudgedOf, nudgeSteps } from "../../../../renderer/tools/nudged.ts";
import { smallRoute, withRows } from "../../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());

function steps(selection: Parameters<typeof nudgedOf>[0], byM: readonly [number, number]) {
  const nudged = nudgedOf(selection);
  if (!nudged) throw new Error("nothing is nudged");
  return nudgeSteps(plant, "ground", nudged, byM);
}

test("several terminals go along their strand together, a terminal's own coil with it", () => {
  expect(steps(["terminal/terminal-1", "slack/coil-1", "terminal/terminal-2"], [0.5, 0])).toMatchObject({
    ok: true,
    label: "Move 2 terminals, 1 coil",
    steps: [
      { command: "terminal.move", input: { terminalId: "terminal-1", spanId: "span-2", offsetM: 0.9144 + 0.5 } },
      { command: "terminal.move", input: { terminalId: "terminal-2", spanId: "span-3", offsetM: 0.9144 + 0.5 } },
    ],
  });
});

test("where poles are among the things, only poles and living units are moved: what hangs goes with its pole", () => {
  const done = steps(["pole/pole-2", "terminal/terminal-1", "livingUnit/unit-1"], [0, 0.1]);
  expect(done.ok && done.steps.map((one) => one.command)).toEqual(["pole.move", "row.set"]);
});

test("a pole alone, a span and nothing are walked from", () => {
  expect([nudgedOf([]), nudgedOf(["pole/pole-2"]), nudgedOf(["span/span-1"])]).toEqual([null, null, null]);
});

test("across the strand nothing moves, and none moves where one would pass its pole", () => {
  expect(steps(["terminal/terminal-1"], [0, 1])).toEqual({ ok: false, what: "The strand does not run that way." });
  expect(steps(["terminal/terminal-1", "crossing/crossing-1"], [-1, 0])).toEqual({
    ok: false,
    what: "The strand ends here.",
  });
});

test("closures, structures and ground points go along their span too", () => {
  const at = { spanId: "span-2", offsetM: 20 };
  const closure = { id: "closure-9", name: "C-9", cableId: "cable-1", note: "", ...at };
  const point = { id: "ground-9", groundM: 99, ...at };
  const built = openPlant(withRows(smallRoute(), "closure", [closure], "groundPoint", [point]));
  const nudged = nudgedOf(["closure/closure-9", "groundPoint/ground-9"]);
  if (!nudged) throw new Error("nothing is nudged");
  expect(nudgeSteps(built, "ground", nudged, [0.5, 0])).toMatchObject({
    steps: [
      { command: "row.set", input: { table: "closure", id: "closure-9", values: { offsetM: 20.5 } } },
      { command: "row.set", input: { table: "groundPoint", id: "ground-9", values: { offsetM: 20.5 } } },
    ],
  });
});
