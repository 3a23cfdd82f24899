import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { removalBlocked, removalFor, removalName } from "../../../../renderer/tools/removal.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";
import { windowOn } from "../windowOn.ts";

test("what hangs on a pole is counted by kind before it is taken away", () => {
  const { chosenWords, alsoWords } = removalFor(openPlant(smallRoute()), ["pole/pole-2"]);
  expect(chosenWords).toBe("pole P2");
  expect(alsoWords).toMatch(/4 attachments, 2 spans, 1 crossing, .*1 terminal, .*2 drops/);
});

test("several things are named by their count, and what is chosen is not counted among what hangs on it", () => {
  const { rows, chosenWords, alsoWords } = removalFor(openPlant(smallRoute()), ["terminal/terminal-1", "drop/drop-1"]);
  expect(rows).toHaveLength(2);
  expect(chosenWords).toBe("1 terminal, 1 drop");
  expect(alsoWords).toContain("1 drop");
});

test("the name of the action tells both, and a locked kind says why it stays", () => {
  const { session } = windowOn(smallRoute());
  expect(removalBlocked(session)).toBe("Nothing is chosen.");
  session.view.setState({ selection: ["crossing/crossing-1"] });
  expect(removalName(session)).toMatch(/^Remove \S/);
  expect(removalBlocked(session)).toBeNull();
  const { kinds } = session.view.getState();
  session.view.setState({ kinds: { ...kinds, crossing: { shown: "full", isLocked: true } } });
  expect(removalBlocked(session)).toBe("Crossings are locked; unlock them under Kinds.");
});
