import { expect, test } from "vitest";
import { type OrderedPole, spansFromOrder } from "../../../core/exchange/spansFromOrder.ts";

const pole = (tag: string, order: number, eastM: number, more: Partial<OrderedPole> = {}): OrderedPole => ({
  tag,
  order,
  eastM,
  northM: 0,
  lonLat: null,
  line: "Main",
  fromTag: "",
  fileLine: order + 1,
  ...more,
});
const finder = (poles: readonly OrderedPole[]) => (tag: string) => poles.find((one) => one.tag === tag);
const pairs = (made: ReturnType<typeof spansFromOrder>): string[] =>
  made.spans.map((span) => `${span.fromTag}-${span.toTag}`);

test("poles of a line are joined in order, whatever order the file has them in", () => {
  const poles = [pole("P3", 3, 80), pole("P1", 1, 0), pole("P2", 2, 40.0004)];
  const made = spansFromOrder(poles, finder(poles));
  expect(made.spans).toEqual([
    { fromTag: "P1", toTag: "P2", lengthM: 40, origin: "ordered", note: "", review: "" },
    { fromTag: "P2", toTag: "P3", lengthM: 40, origin: "ordered", note: "", review: "" },
  ]);
});

test("a lateral is joined to the pole it starts from, and lines are not joined to each other", () => {
  const lateral = { line: "Lateral A" };
  const poles = [
    pole("P1", 1, 0),
    pole("P2", 2, 40),
    pole("A1", 1, 40, { ...lateral, northM: 30, fromTag: "P2" }),
    pole("A2", 2, 40, { ...lateral, northM: 60 }),
  ];
  expect(pairs(spansFromOrder(poles, finder(poles)))).toEqual(["P1-P2", "A1-A2", "P2-A1"]);
});

test("poles that each name the one before them need no order", () => {
  const poles = [pole("P1", 0, 0), pole("P2", 0, 40, { fromTag: "P1" }), pole("P3", 0, 80, { fromTag: "P2" })];
  expect(pairs(spansFromOrder(poles, finder(poles)))).toEqual(["P1-P2", "P2-P3"]);
});

test("poles without an order get no span", () => {
  const poles = [pole("P1", 1, 0), pole("P2", 0, 40), pole("P3", 0, 80)];
  expect(spansFromOrder(poles, finder(poles)).spans).toEqual([]);
});

test("a step over a missing pole is put up for review, and a count by tens is not", () => {
  const gapped = [pole("P1", 1, 0), pole("P2", 2, 40), pole("P4", 4, 120)];
  expect(spansFromOrder(gapped, finder(gapped)).spans.map((span) => span.review)).toEqual([
    "",
    "The order goes from 2 to 4: a pole between may be missing.",
  ]);
  const tens = [pole("P1", 10, 0), pole("P2", 20, 40), pole("P3", 30, 80)];
  expect(spansFromOrder(tens, finder(tens)).spans.every((span) => span.review === "")).toBe(true);
});

test("an order used twice and an unknown starting pole are reported at their rows", () => {
  const poles = [
    pole("P1", 1, 0),
    pole("P2", 2, 40),
    pole("P2b", 2, 41),
    pole("A1", 1, 0, { line: "A", fromTag: "P9" }),
  ];
  expect(spansFromOrder(poles, finder(poles)).bad).toMatchObject([
    { field: "order", value: "2" },
    { field: "fromTag", value: "P9" },
  ]);
});
