import { describe, expect, test } from "vitest";
import { openMoveTrials } from "../../../core/edits/moveTrial.ts";
import { findCommand } from "../../../core/edits/register.ts";
import { routeWith } from "../../../core/layout/rowSet.ts";
import { dropRunM } from "../../../core/plant/dropView.ts";
import { lightMargin } from "../../../core/plant/lightMargin.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

describe("trying to move drops", () => {
  test("tells cost, reach, fill and light as they are once the move is made", () => {
    const route = smallRoute();
    const trial = openMoveTrials(route, ["drop-1", "drop-2"])("terminal-2");
    if (trial.kind !== "possible") throw new Error(trial.what);
    const asked = findCommand("drops.move")?.ask(route, { dropIds: ["drop-1", "drop-2"], terminalId: "terminal-2" });
    if (!asked?.ok) throw new Error("the move is refused");
    const [before, after] = [openPlant(route), openPlant(routeWith(route, asked.value.rows))];
    const runs = (plant: typeof before) => ["drop-1", "drop-2"].map((id) => dropRunM(plant, id));
    const changeM = runs(after).reduce((a, b) => a + b) - runs(before).reduce((a, b) => a + b);
    const { costPerM } = before.rowOf("dropType", "drop-flat");
    expect(trial.runChangeM).toBeCloseTo(changeM, 9);
    expect(trial.costChange).toBeCloseTo(changeM * costPerM, 9);
    expect(trial.longestRunM).toBeCloseTo(Math.max(...runs(after)), 9);
    expect(trial.to).toEqual({ terminalId: "terminal-2", before: 1, after: 3, total: 8, spareAfter: 5 });
    expect(trial.from).toEqual([{ terminalId: "terminal-1", before: 2, after: 0, total: 8, spareAfter: 8 }]);
    const margins = ["drop-1", "drop-2"].map((id) => lightMargin(after, id));
    const worst = Math.min(...margins.map((one) => (one.kind === "known" ? one.worstDb : Number.NaN)));
    expect(trial.lightAfter?.marginDb).toBeCloseTo(worst, 9);
    expect(trial.drops).toEqual(["drop-1", "drop-2"].map((id) => after.rowOf("drop", id)));
  });

  test("leaves the route as it was: a second try says the same", () => {
    const tryAt = openMoveTrials(smallRoute(), ["drop-1"]);
    const first = tryAt("terminal-2");
    tryAt("terminal-1");
    expect(tryAt("terminal-2")).toEqual(first);
  });

  test("is refused beyond reach, with how far it would be", () => {
    const near = smallRoute({ settings: { dropReachM: 45 } });
    const trial = openMoveTrials(near, ["drop-1"])("terminal-2");
    expect(trial).toMatchObject({ kind: "refused", what: "Terminal T2 is beyond the drop reach of 1 Test Rd." });
    expect(trial.kind === "refused" && trial.beyondM).toBeGreaterThan(45);
  });

  test("is refused where the terminal has no port, and where it serves them already", () => {
    const full = changed(smallRoute(), "terminal", "terminal-2", { reservedPortCount: 7 });
    expect(openMoveTrials(full, ["drop-1"])("terminal-2")).toMatchObject({
      kind: "refused",
      what: "Terminal T2 has 0 of its 8 ports free for 1 more; 7 reserved.",
    });
    expect(openMoveTrials(full, ["drop-1"])("terminal-1")).toMatchObject({ kind: "refused", beyondM: null });
  });

  test("says so where a drop has no light there", () => {
    const dark = changed(smallRoute(), "fiberUse", "use-2", { splitterId: null });
    const trial = openMoveTrials(dark, ["drop-1"])("terminal-2");
    expect(trial).toMatchObject({ kind: "possible", lightAfter: null });
    expect(trial.kind === "possible" && trial.lightBefore).not.toBeNull();
  });
});
