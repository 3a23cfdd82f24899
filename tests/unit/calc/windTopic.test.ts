import { expect, it } from "vitest";
import { windTopic } from "../../../core/calc/windTopic.ts";

it("factors left out are those of round wire", () => {
  const gust = { gustMPerS: 40, heightFactor: 1.1, spanFactor: 0.86 };
  const plain = windTopic.run(gust);
  expect(plain).toMatchObject({ ok: true, value: { windPa: expect.closeTo(928.3, 0) } });
  expect(windTopic.run({ ...gust, shapeFactor: 1, importanceFactor: 1 })).toEqual(plain);
});
