import { expect, it } from "vitest";
import { loadTopic } from "../../../core/calc/loadTopic.ts";
import { lineLoad } from "../../../core/strand/lineLoad.ts";

it("load answers what the program's own kernel computes", () => {
  const iced = { diameterM: 0.017272, weightNPerM: 2.948, iceM: 0.0127, windPa: 191.5, constantNPerM: 4.378 };
  expect(loadTopic.run(iced)).toEqual({ ok: true, value: lineLoad(iced) });
});
