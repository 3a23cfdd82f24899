import { expect, it } from "vitest";
import { breakPlaceTopic } from "../../../core/calc/breakPlaceTopic.ts";
import { traceMatchTopic } from "../../../core/calc/traceMatchTopic.ts";

it("finds the lead, the splice and the break of the example's trace", () => {
  expect(traceMatchTopic.run(traceMatchTopic.example)).toMatchObject({
    ok: true,
    value: {
      leadM: 150,
      matches: [{ name: "hub" }, { name: "closure S1", atM: 965, moreM: 3 }],
      missing: [],
      unmatched: [],
      brokenAtM: 1341,
      beyond: ["terminal T9"],
    },
  });
});

it("places the break behind the splice it is counted on from", () => {
  const answer = breakPlaceTopic.run(breakPlaceTopic.example);
  // 376 m behind the splice at 812 m, a little less by what the splice tells of the scale
  expect(answer).toMatchObject({ ok: true, value: { break: { fromFiberM: 812, slackM: 6 } } });
  expect(answer.ok && JSON.stringify(answer.value)).toMatch(/"fiberM":118[67]\./);
});

it("has no break to place where the fiber is whole, and refuses events out of order", () => {
  const whole = { ...(breakPlaceTopic.example as object), events: [] };
  expect(breakPlaceTopic.run(whole)).toEqual({ ok: true, value: { break: null } });
  const [a, b] = [3, 2].map((atM) => ({ atM, lossDb: 0, reflects: false, ends: false }));
  const mixed = { ...(traceMatchTopic.example as object), events: [a, b] };
  expect(traceMatchTopic.run(mixed)).toMatchObject({ ok: false, fault: { code: "out-of-range" } });
});
