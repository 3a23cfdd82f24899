import { expect, it } from "vitest";
import { layoutTopic } from "../../../core/calc/layoutTopic.ts";

const facilities = [
  {
    id: "P1",
    models: [
      { capacity: 3, cost: 900 },
      { capacity: 7, cost: 1150 },
      { capacity: 5, cost: 2000 },
    ],
  },
  { id: "P2", capacity: 2, cost: 500 },
];
const customers = [
  { id: "a", demand: 1 },
  { id: "b", demand: 3 },
  { id: 7, demand: 1 },
];
const arcs = [
  ["a", "P1", 100],
  ["a", "P2", 10],
  ["b", "P1", 300],
  [7, "P1", 120],
  [7, "P2", 200],
];

it("the cheapest model that holds the load is paid, and a second place is not opened for shorter drops alone", () => {
  expect(layoutTopic.run({ facilities, customers, arcs })).toEqual({
    ok: true,
    value: {
      cost: 1670,
      bound: 1670,
      gap: 0,
      open: ["P1"],
      assignment: { a: "P1", b: "P1", 7: "P1" },
      status: "optimal",
      seconds: 0,
    },
  });
});

it("a customer without an arc is unserved and said why", () => {
  expect(layoutTopic.run({ facilities, customers, arcs: arcs.slice(0, 3) })).toMatchObject({
    ok: true,
    value: {
      status: "infeasible",
      unserved: [{ id: 7, reason: "no place is within reach" }],
      assignment: { a: "P1", b: "P1" },
    },
  });
});

it.each([
  [
    { facilities, customers, arcs: [["a", "P9", 1]] },
    "unknown-id",
    'arcs[0][1] names "P9", which is not among the facilities.',
  ],
  [
    { facilities, customers, arcs: [["z", "P1", 1]] },
    "unknown-id",
    'arcs[0][0] names "z", which is not among the customers.',
  ],
  [
    { facilities: [facilities[1], facilities[1]], customers, arcs },
    "repeated-id",
    'The id "P2" stands twice in facilities.',
  ],
])("%# a request that contradicts itself is refused with the place", (request, code, what) => {
  expect(layoutTopic.run(request)).toMatchObject({ ok: false, fault: { code, what } });
});

it("the clock ends the search at its time limit and tells the seconds", () => {
  let nowS = 100;
  const clock = () => (nowS += 1);
  const answer = layoutTopic.run({ facilities, customers, arcs, timeLimitS: 2 }, { clock });
  expect(answer).toMatchObject({ ok: true, value: { cost: 1670, seconds: expect.any(Number) } });
  expect(Object(answer).value.seconds).toBeGreaterThan(1);
});

it("so many places are open as asked, were it dearer", () => {
  expect(layoutTopic.run({ facilities, customers, arcs, openExactly: 2 })).toMatchObject({
    ok: true,
    value: { cost: 1910, bound: 1910, open: ["P1", "P2"], status: "optimal" },
  });
});

it("where as many places as asked cannot serve all, all are named", () => {
  const apart = [
    ["a", "P1", 1],
    ["b", "P1", 1],
    [7, "P2", 1],
  ];
  expect(layoutTopic.run({ facilities, customers, arcs: apart, openExactly: 1 })).toMatchObject({
    ok: true,
    value: {
      status: "infeasible",
      unserved: ["a", "b", 7].map((id) => ({ id, reason: "no layout with exactly 1 point open was found" })),
    },
  });
});
