import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { openSceneMaker } from "../../../renderer/canvas/scene.ts";
import { nearestPole, neighbour } from "../../../renderer/canvas/walk.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const scene = openSceneMaker(openPlant(smallRoute()))(smallRoute());

test("walking right from a pole comes to the terminal beside it, then to the next pole", () => {
  const terminal = neighbour(scene, { eastM: 45, northM: 0 }, "right", "pole/pole-2", true);
  expect(terminal).toBe("terminal/terminal-1");
  expect(neighbour(scene, { eastM: 45.9144, northM: 0 }, "right", terminal, true)).toBe("pole/pole-3");
});

test("walking left leads back, and past the last pole there is nothing", () => {
  expect(neighbour(scene, { eastM: 45, northM: 0 }, "left", "pole/pole-2", true)).toBe("pole/pole-1");
  expect(neighbour(scene, { eastM: 0, northM: 0 }, "left", "pole/pole-1", true)).toBeNull();
});

test("a walk begins at the pole nearest to the middle of the view", () => {
  expect(nearestPole(scene, 95, 20)).toBe("pole/pole-3");
});

test("what is hidden is walked past", () => {
  const isShown = (kind: "pole" | "terminal"): boolean => kind === "terminal";
  expect(neighbour(scene, { eastM: 0, northM: 0 }, "right", null, true, isShown)).toBe("terminal/terminal-1");
  expect(neighbour(scene, { eastM: 0, northM: 0 }, "right", null, false, isShown)).toBeNull();
});
