import { expect, it } from "vitest";
import { tapChainTopic } from "../../../core/calc/tapChainTopic.ts";

const asked = { betweenDb: [0, 0], offeredFrac: [0.1, 0.5], excessDb: 0 };

it("two terminals take half each where that can be had, beside what one splitter would lose", () => {
  expect(tapChainTopic.run(asked)).toEqual({
    ok: true,
    value: {
      sharesFrac: [0.5],
      lossesDb: [expect.closeTo(3.0103, 4), expect.closeTo(3.0103, 4)],
      worstDb: expect.closeTo(3.0103, 4),
      oneSplitterDb: expect.closeTo(4.2, 9),
      idealDb: expect.closeTo(3.0103, 4),
    },
  });
});

it("taps decided already are worked out as they are", () => {
  expect(tapChainTopic.run({ ...asked, sharesFrac: [0.1] })).toMatchObject({
    value: { worstDb: expect.closeTo(10, 9) },
  });
});

it("more taps than terminals less one are refused", () => {
  expect(tapChainTopic.run({ ...asked, sharesFrac: [0.1, 0.1] })).toMatchObject({
    ok: false,
    fault: { code: "out-of-range" },
  });
});
