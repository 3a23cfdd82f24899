import { expect, it } from "vitest";
import { rulingSpanTopic } from "../../../core/calc/rulingSpanTopic.ts";

it("a row of like spans is ruled by one of them", () => {
  expect(rulingSpanTopic.run({ spansM: [40, 40, 40] })).toEqual({ ok: true, value: { rulingSpanM: 40 } });
});

it("a row without a span is refused", () => {
  expect(rulingSpanTopic.run({ spansM: [] })).toMatchObject({ fault: { code: "out-of-range" } });
});
