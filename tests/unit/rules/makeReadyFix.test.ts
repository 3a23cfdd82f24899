import { describe, expect, it } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import { makeReady } from "../../../core/jointpole/makeReady.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { makeReadyFix } from "../../../core/rules/makeReadyFix.ts";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";

/** P2 with the neutral low and a telephone cable right under it: ours has no place. */
function fullPole(): Route {
  const low = changed(smallRoute(), "attachment", "neutral-2", { heightM: 7.0104 });
  return changed(low, "attachment", "telephone-2", { heightM: 6.096 });
}

function afterFix(route: Route): Route {
  const plant = openPlant(route);
  const ready = makeReady(plant, "pole-2");
  if (ready.kind !== "moves") throw new Error(ready.kind);
  const fix = makeReadyFix(plant, "pole-2", ready.best);
  const asked = findCommand(fix.command)?.ask(route, fix.input);
  if (!asked?.ok) throw new Error(asked?.fault.what);
  const next = applyChange(route, asked.value);
  if (!next.ok) throw new Error(next.fault.what);
  return next.value;
}

describe("the edit that makes a pole ready", () => {
  it("leaves nothing more to do on the pole", () => {
    expect(makeReady(openPlant(afterFix(fullPole())), "pole-2")).toEqual({ kind: "nothing" });
  });

  it("hangs our strand where nobody has recorded it", () => {
    const after = afterFix(without(fullPole(), "attachment", "strand-2"));
    const ours = [...after.attachment.values()].filter((one) => one.poleId === "pole-2" && one.kind === "ourStrand");
    expect(ours).toHaveLength(1);
    expect(makeReady(openPlant(after), "pole-2")).toEqual({ kind: "nothing" });
  });

  it("is called by who goes where", () => {
    const plant = openPlant(fullPole());
    const ready = makeReady(plant, "pole-2");
    if (ready.kind !== "moves") throw new Error(ready.kind);
    expect(makeReadyFix(plant, "pole-2", ready.best).label).toMatch(
      /^Put Telephone at \d+ ft \d+ in, our strand at \d+ ft \d+ in on pole P2$/,
    );
  });
});
