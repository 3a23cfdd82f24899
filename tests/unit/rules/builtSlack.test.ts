import { describe, expect, it } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { routeRead, terminal1 } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("built-slack", () => {
  it("5 m left where the opening takes 6.096 m is found", () => {
    expect(findingsOf(faultyRoute("built-slack"), "built-slack")).toMatchObject([
      { message: "The coil left at terminal T1 is shorter than its opening takes.", measured: 5, limit: 6.096 },
    ]);
  });

  it("a coil longer than drawn is quiet", () => {
    expect(findingsOf(routeRead(readingRow(terminal1, "slack", 7)), "built-slack")).toEqual([]);
  });

  it("the coil drawn as short as it was built is the drawing's own error from then on", () => {
    const route = faultyRoute("built-slack");
    const [fix] = findingsOf(route, "built-slack")[0]?.fixes ?? [];
    const asked = findCommand(fix?.command ?? "")?.ask(route, fix?.input);
    if (!asked?.ok) throw new Error("the fix was refused");
    const drawn = applyChange(route, { rows: asked.value.rows });
    if (!drawn.ok) throw new Error(drawn.fault.what);
    expect(findingsOf(drawn.value).map((one) => one.ruleId)).toEqual(["coil-too-short"]);
  });
});
