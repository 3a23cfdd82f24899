import { expect, it } from "vitest";
import { returnWaveTopic } from "../../../core/calc/returnWaveTopic.ts";

it("ten returns in twice the time are four times the sag", () => {
  expect(returnWaveTopic.run({ timeS: 12, returnCount: 10 })).toMatchObject({
    ok: true,
    value: { sagM: expect.closeTo(0.4413, 4) },
  });
  expect(returnWaveTopic.run({ timeS: 24, returnCount: 10 })).toMatchObject({
    value: { sagM: expect.closeTo(4 * 0.4413, 3) },
  });
});

it("half a return is refused", () => {
  expect(returnWaveTopic.run({ timeS: 12, returnCount: 0.5 })).toMatchObject({ ok: false });
});
