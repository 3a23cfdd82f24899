import { describe, expect, it } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { pole2, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("built-height", () => {
  it("a strand hung 2.4 m too low is found over the road, with the edit that draws it there", () => {
    expect(findingsOf(faultyRoute("built-height"), "built-height")).toMatchObject([
      {
        message:
          "As built at pole P2, over Test Rd in span P2 to P3 the line is too low in every case, most under ice.",
        fixes: [{ command: "attachment.set", input: { attachmentId: "strand-2", heightM: 3.9 } }],
      },
    ]);
  });

  it("a strand hung against the telephone cable and one hung up to the neutral are found", () => {
    const read = (heightM: number) =>
      findingsOf(routeRead(readingRow(pole2, "height", heightM)), "built-height").map((one) => one.message);
    expect(read(5.4)).toEqual(["As built at pole P2 our strand is too near the communication of Telephone."]);
    expect(read(7.8)).toEqual(["As built at pole P2 our strand is too near the neutral of Power company."]);
  });

  it("clearances as built are those of the same heights drawn: to the tenth of a millimetre", () => {
    const route = faultyRoute("built-height");
    const built = findingsOf(route, "built-height").find((one) => one.message.includes("Test Rd"));
    const asked = findCommand("attachment.set")?.ask(route, { attachmentId: "strand-2", heightM: 3.9 });
    if (!asked?.ok) throw new Error("the edit was refused");
    const drawn = applyChange(route, { rows: asked.value.rows });
    if (!drawn.ok) throw new Error(drawn.fault.what);
    const [crossing] = findingsOf(drawn.value, "crossing-clearance");
    expect(built?.measured).toBeCloseTo(crossing?.measured ?? 0, 4);
    expect(findingsOf(drawn.value, "built-height")).toEqual([]);
  });

  it("a strand hung two inches lower where everything still clears is quiet", () => {
    expect(findingsOf(routeRead(readingRow(pole2, "height", 6.25)), "built-height")).toEqual([]);
  });
});
