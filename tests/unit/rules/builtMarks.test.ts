import { describe, expect, it } from "vitest";
import { findCommand } from "../../../core/edits/register.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { markAtPole, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("built-marks", () => {
  it("12 ft more sheath in a span of 148 ft than drawn are found, with the edit that draws the span so long", () => {
    const [finding] = findingsOf(faultyRoute("built-marks"), "built-marks");
    expect(finding).toMatchObject({
      message: "Between P1 and P2 more of cable C1 was used than drawn.",
      fixes: [{ command: "span.measure", input: { spanId: "span-1" } }],
    });
    expect(finding?.measured).toBeCloseTo(160 * 0.3048, 9);
  });

  it("a mark with two digits exchanged is found, with the figure it should be", () => {
    const route = routeRead(markAtPole(1, 1000), markAtPole(2, 1418), markAtPole(3, 1315));
    const found = findingsOf(route, "built-marks");
    expect(found).toMatchObject([
      {
        message:
          "The mark 1418 of cable C1 at P2 does not fit those before and after it; two digits exchanged, it would be 1148.",
        fixes: [{ label: "Take it as 1148", command: "reading.take", input: { value: 1148 } }],
      },
    ]);
    const [fix] = found.flatMap((one) => one.fixes);
    expect(findCommand(fix?.command ?? "")?.ask(route, fix?.input)).toMatchObject({ ok: true });
  });

  it("marks as far apart as the cable was drawn are quiet", () => {
    expect(findingsOf(routeRead(markAtPole(1, 1000), markAtPole(2, 1148)), "built-marks")).toEqual([]);
  });
});
