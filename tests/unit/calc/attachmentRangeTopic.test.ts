import { expect, it } from "vitest";
import { attachmentRangeTopic } from "../../../core/calc/attachmentRangeTopic.ts";

const span = { lengthM: 40, farHeightM: 7, sagM: 0.4, places: [], wires: [] };

it("a neutral at 26 ft and a cable at 20 ft leave 30 in under the one and 12 in over the other", () => {
  const wires = [
    { heightM: 7.9248, keepM: 0.762, ours: "below" },
    { heightM: 6.096, keepM: 0.3048, ours: "above" },
  ];
  expect(attachmentRangeTopic.run({ lowestM: 5, wires, spans: [] })).toEqual({
    ok: true,
    value: {
      free: [{ fromM: expect.closeTo(6.4008, 9), fromBy: "wires.1", toM: expect.closeTo(7.1628, 9), toBy: "wires.0" }],
    },
  });
});

it("a road in midspan asks twice for what lacks there: half of a rise here reaches it", () => {
  // a point at midspan: (h + 7) / 2 - 0.4 = 6 at h = 5.8
  const places = [{ fromM: 20, toM: 20, surfaceM: 0, keepM: 6 }];
  expect(attachmentRangeTopic.run({ lowestM: 3, wires: [], spans: [{ ...span, places }] })).toMatchObject({
    value: { free: [{ fromM: expect.closeTo(5.8, 9), fromBy: "spans.0.places.0", toM: null, toBy: null }] },
  });
});

it("a slack wire over ours takes more of the height than at the pole", () => {
  // equal heights at the far pole but 1 m: at share s the gap is (8 - h) s + 1 (1 - s) - 4 (0.9 - 0.4) s (1 - s)
  const wires = [{ nearHeightM: 8, farHeightM: 8, sagM: 0.9, keepM: 0.5, ours: "below" }];
  const { value } = attachmentRangeTopic.run({ lowestM: 3, wires: [], spans: [{ ...span, wires }] }) as {
    readonly value: { readonly free: readonly { readonly toM: number }[] };
  };
  const toM = value.free[0]?.toM ?? Number.NaN;
  const gapM = (share: number) => (8 - toM) * share + (1 - share) - 4 * 0.5 * share * (1 - share);
  const least = Math.min(...Array.from({ length: 10001 }, (_, n) => gapM(n / 10000)));
  expect(least).toBeCloseTo(0.5, 6);
  expect(toM).toBeLessThan(7.5);
});

it("no height will do where the far end falls short by itself", () => {
  const places = [{ fromM: 30, toM: 40, surfaceM: 0, keepM: 8 }];
  expect(attachmentRangeTopic.run({ lowestM: 3, wires: [], spans: [{ ...span, places }] })).toMatchObject({
    value: { free: [] },
  });
});

it("a place that is not within its span is refused", () => {
  const places = [{ fromM: 30, toM: 50, surfaceM: 0, keepM: 5 }];
  expect(attachmentRangeTopic.run({ lowestM: 3, wires: [], spans: [{ ...span, places }] })).toMatchObject({
    fault: { code: "out-of-range", what: "a place must begin before it ends, within its span." },
  });
});
