import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { strandAtPole } from "../../../core/plant/strandHeight.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { Mark } from "../../../core/sheets/paper/displayList.ts";
import { bondMm } from "../../../core/sheets/paper/symbols.ts";
import { bondedPoles } from "../../../core/sheets/plan/planBonds.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import type { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const marksOf = (route: ReturnType<typeof windingRoute>, kind: "plan" | "cover") =>
  composeSet(openPlant(route), [], { kinds: [kind] }).sheets.flatMap((sheet) => sheet.marks);
const textsOf = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

/** Longest bars of bonds: level strokes of that length among the poles. */
const bondBars = (marks: readonly Mark[]) =>
  marks.filter((mark) => {
    if (mark.kind !== "line" || mark.layer !== "poles" || mark.pointsMm.length !== 2) return false;
    const [a, b] = mark.pointsMm;
    return a !== undefined && b !== undefined && a[1] === b[1] && Math.abs(b[0] - a[0] - bondMm.width) < 1e-9;
  });

describe("a strand plan", () => {
  it("shows a bond at the poles of the bonding schedule, and the legend tells its sign", () => {
    const route = smallRoute();
    const bonded = bondedPoles(openPlant(route));
    expect(bonded.size).toBeGreaterThan(0);
    expect(bondBars(marksOf(route, "plan"))).toHaveLength(bonded.size);
    expect(bondBars(marksOf(route, "cover"))).toHaveLength(1);
    expect(textsOf(marksOf(route, "cover"))).toContain("Bond of the strand to the pole's ground");
  });

  it("tells the height of our strand at every pole, and what hangs there on the line itself", () => {
    const route = smallRoute();
    const plant = openPlant(route);
    const texts = textsOf(marksOf(route, "plan"));
    for (const id of route.pole.keys())
      expect(texts).toContain(`ours at ${formatLength(strandAtPole(plant, id).heightM, "us", "height")}`);
    expect(texts).toContain("strand Quarter inch");
    expect(texts).toContain("C1, 48 fibers");
  });
});
