import { describe, expect, it } from "vitest";
import { builtPlant } from "../../../core/closeout/builtPlant.ts";
import { asBuiltRows } from "../../../core/edits/asBuiltRows.ts";
import { explain } from "../../../core/explain/explain.ts";
import { figureOfFinding } from "../../../core/explain/figureOfFinding.ts";
import { routeWith } from "../../../core/layout/rowSet.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { repeatedFinding } from "../../../core/rules/asBuilt.ts";
import { asBuiltRules } from "../../../core/rules/asBuiltRules.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { soundAndRead } from "../../fixtures/route/faultyBuilt.ts";
import { pole2, routeRead, terminal1 } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const asBuilt = (route: Route): Route => routeWith(route, asBuiltRows(route));
const onBuilt = (route: Route) => findingsOf(route).filter((one) => asBuiltRules.some(({ id }) => id === one.ruleId));

describe("rules of the design asked of what was built", () => {
  it.each(Object.entries(soundAndRead))(
    "%s: what the drawing has sound and was built otherwise is found",
    (ruleId, one) => {
      const designRule = ruleId.replace(/^built-/, "");
      expect(findingsOf(one.drawn(), designRule)).toEqual([]);
      const built = findingsOf(faultyRoute(ruleId), ruleId);
      expect(built.length).toBeGreaterThan(0);
      const drawn = findingsOf(asBuilt(faultyRoute(ruleId)), designRule);
      expect(built.map(({ measured, limit, severity }) => ({ measured, limit, severity }))).toEqual(
        drawn.map(({ measured, limit, severity }) => ({ measured, limit, severity })),
      );
      for (const { subjects } of built) expect(subjects[0]).toEqual({ table: "reading", id: one.read.id });
    },
  );

  it.each(Object.entries(soundAndRead))("%s: drawn as built, it is the drawing's own", (ruleId) => {
    expect(onBuilt(asBuilt(faultyRoute(ruleId)))).toEqual([]);
  });

  it("a strand hung 2.4 m too low is found over the road, with the edit that draws it there", () => {
    expect(findingsOf(faultyRoute("built-crossing-clearance"), "built-crossing-clearance")).toMatchObject([
      {
        message:
          "As built at pole P2, over Test Rd in span P2 to P3 the line is too low in every case, most under ice.",
        fixes: [
          { label: "Draw it as built", command: "attachment.set", input: { attachmentId: "strand-2", heightM: 3.9 } },
        ],
      },
    ]);
  });

  it("the figure of a crossing as built is reckoned from what was read, and is what the finding measures", () => {
    const route = faultyRoute("built-crossing-clearance");
    const [finding] = findingsOf(route, "built-crossing-clearance");
    const repeated = finding && repeatedFinding(finding);
    if (!finding || !repeated) throw new Error("a finding as built");
    const plant = builtPlant(openPlant(route));
    const figure = figureOfFinding(plant, repeated);
    const told = figure && explain(plant, figure, "metric");
    expect(told).toMatchObject({ kind: "known" });
    expect(told?.kind === "known" && told.result.value).toBeCloseTo(finding.measured ?? 0, 9);
  });

  it("a pole is named once where the finding is at it", () => {
    expect(findingsOf(faultyRoute("built-supply-separation-at-pole"), "built-supply-separation-at-pole")).toMatchObject(
      [{ message: "As built at pole P2 our strand is not far enough below the neutral of Power company." }],
    );
  });

  it("a span low at both ends is one finding, with an edit for each of its readings", () => {
    const route = routeRead(
      readingRow(pole2, "height", 4.6),
      readingRow({ ...pole2, subjectId: "pole-3" }, "height", 4.7),
      readingRow(terminal1, "offset", 0.93),
    );
    expect(findingsOf(route, "built-crossing-clearance")).toMatchObject([
      {
        message: expect.stringMatching(/^As built at pole P2, pole P3 and terminal T1, over Test Rd in span P2 to P3 /),
        fixes: [
          { label: "Draw it as built: pole P2", command: "attachment.set" },
          { label: "Draw it as built: pole P3", command: "attachment.set" },
          { label: "Draw it as built: terminal T1", command: "terminal.move" },
        ],
      },
    ]);
  });

  it("what is too low on the drawing is found once more only where it was built lower still", () => {
    const low = faultyRoute("crossing-clearance");
    const read = (heightM: number) => withRows(low, "reading", [readingRow(pole2, "height", heightM)]);
    expect(findingsOf(read(6.31), "built-crossing-clearance")).toEqual([]);
    expect(findingsOf(read(6.298), "built-crossing-clearance")).toEqual([]);
    expect(findingsOf(read(6.1), "built-crossing-clearance")).toHaveLength(1);
  });

  it("a strand read at a pole that was drawn without one is found, with the edit that draws it", () => {
    const bare = without(smallRoute(), "attachment", "strand-2");
    const route = withRows(bare, "reading", [readingRow(pole2, "height", 3.9)]);
    const [finding] = findingsOf(route, "built-crossing-clearance");
    expect(finding?.fixes).toMatchObject([{ command: "attachment.add", input: { poleId: "pole-2", heightM: 3.9 } }]);
    expect(finding?.measured).toBeCloseTo(
      findingsOf(faultyRoute("built-crossing-clearance"), "built-crossing-clearance")[0]?.measured ?? 0,
      9,
    );
    expect(onBuilt(asBuilt(route))).toEqual([]);
  });

  it("a heavier terminal place moves the sag of a strand that slips at its poles, in the spans beside too", () => {
    const slipping = changed(smallRoute(), "strandSection", "section-1", { atPoles: "slipping" });
    const beside = withRows(slipping, "reading", [readingRow(terminal1, "offset", 20)]);
    const low = changed(beside, "crossing", "crossing-1", { surfaceM: 101.5, spanId: "span-1" });
    const drawn = changed(slipping, "crossing", "crossing-1", { surfaceM: 101.5, spanId: "span-1" });
    const leastOf = (route: Route) => findingsOf(route, "crossing-clearance")[0]?.measured ?? 0;
    expect(leastOf(asBuilt(low))).not.toBeCloseTo(leastOf(drawn), 4);
  });

  it("what was built as drawn is quiet", () => {
    expect(onBuilt(routeRead(readingRow(pole2, "height", 6.3), readingRow(terminal1, "offset", 0.9144)))).toEqual([]);
  });

  it("a strand hung two inches lower where everything still clears is quiet", () => {
    expect(onBuilt(routeRead(readingRow(pole2, "height", 6.25)))).toEqual([]);
  });
});
