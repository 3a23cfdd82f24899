import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { actionOf } from "../../../../renderer/app/actions.ts";
import { hitAll, refsWithin, screenPoint } from "../../../../renderer/canvas/hitTest.ts";
import { arrangementHere } from "../../../../renderer/tools/arrange/arrange.ts";
import { plainArranging } from "../../../../renderer/tools/arrange/arranging.ts";
import { chooseAll } from "../../../../renderer/tools/chooseAll.ts";
import { inkFrac, usualKinds, withoutHidden } from "../../../../renderer/tools/kinds.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";
import { pictureOf } from "../pictureOf.ts";
import { windowOn } from "../windowOn.ts";

const hiddenPoles = { ...usualKinds, pole: { shown: "hidden", isLocked: false } } as const;

test("a hidden kind is neither met by the pointer nor taken by a box", () => {
  const whole = pictureOf(openPlant(smallRoute()), 4);
  const picture = { ...whole, scene: withoutHidden(whole.scene, hiddenPoles) };
  const [x, y] = screenPoint(whole, "pole/pole-2") ?? [0, 0];
  expect(hitAll(whole, x, y)).toContain("pole/pole-2");
  expect(hitAll(picture, x, y)).not.toContain("pole/pole-2");
  const everywhere = { westM: -1e4, eastM: 1e4, southM: -1e4, northM: 1e4 };
  expect(refsWithin(picture, everywhere).some((ref) => ref.startsWith("pole/"))).toBe(false);
});

test("choosing all skips what is hidden", () => {
  const { session } = windowOn(smallRoute());
  session.view.setState({ kinds: hiddenPoles });
  chooseAll(session);
  const { selection } = session.view.getState();
  expect(selection).toContain("terminal/terminal-1");
  expect(selection.some((ref) => ref.startsWith("pole/"))).toBe(false);
});

test("where living units are hidden no drop is drawn to nowhere", () => {
  const { scene } = pictureOf(openPlant(smallRoute()), 4);
  const everywhere = { westM: -1e4, eastM: 1e4, southM: -1e4, northM: 1e4 };
  expect(scene.drops.index.within(everywhere)).toHaveLength(3);
  const bare = withoutHidden(scene, { ...usualKinds, livingUnit: { shown: "hidden", isLocked: false } });
  expect([bare.drops.index.within(everywhere), bare.houses.index.within(everywhere)]).toEqual([[], []]);
});

test("only a faded kind is inked weaker, and with nothing hidden the scene is the same one", () => {
  const faded = { ...usualKinds, livingUnit: { shown: "faded", isLocked: false } } as const;
  expect([inkFrac(faded, "houses") < 1, inkFrac(faded, "poles")]).toEqual([true, 1]);
  const { scene } = pictureOf(openPlant(smallRoute()), 4);
  expect(withoutHidden(scene, faded)).toBe(scene);
});

test("locked terminals are neither turned, nor arranged, nor given another distance, and each action says why", () => {
  const { session } = windowOn(smallRoute());
  const kinds = { ...usualKinds, terminal: { shown: "full", isLocked: true } } as const;
  session.view.setState({ kinds, selection: ["terminal/terminal-1"] });
  for (const id of ["exact", "turn"])
    expect(actionOf(id).blocked(session)).toBe("Terminals are locked; unlock them under Kinds.");
  expect(arrangementHere(session, { ...plainArranging, way: "alignTerminals", distance: "2 m" })).toMatchObject({
    isReady: false,
    reason: "Terminals are locked; unlock them under Kinds.",
  });
});
