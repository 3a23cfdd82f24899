import { expect, it } from "vitest";
import { assignTopic } from "../../../core/calc/assignTopic.ts";

it("each unit gets a port, and the sum is told", () => {
  expect(assignTopic.run(assignTopic.example)).toEqual({
    ok: true,
    value: {
      assignment: [
        { unit: "12 Elm St", port: "1", cost: 1 },
        { unit: "14 Elm St", port: "2", cost: 1 },
        { unit: "16 Elm St", port: "3", cost: 1 },
      ],
      cost: 3,
    },
  });
});

it("without names units and ports are told by their numbers", () => {
  expect(assignTopic.run({ costs: [[null, 2]] })).toMatchObject({
    value: { assignment: [{ unit: "unit 1", port: "port 2", cost: 2 }] },
  });
});

it("units that share too few ports are named", () => {
  const costs = [
    [1, 1],
    [1, null],
    [1, null],
  ];
  expect(assignTopic.run({ costs: costs.map((row) => [...row, 5]).slice(1) })).toMatchObject({ ok: true });
  expect(assignTopic.run({ costs })).toMatchObject({
    ok: false,
    fault: { code: "no-port", what: "2 units, unit 2, unit 3, may have only this port: port 1." },
  });
  expect(assignTopic.run({ costs: [[null]] })).toMatchObject({ fault: { what: "unit 1 may have no port at all." } });
});

it.each([
  [{ units: ["a"], costs: [[1], [2]] }, "costs has 2 rows for 1 units."],
  [{ costs: [[1, 2], [1]] }, "costs[1] has 1 figures for 2 ports."],
])("a table that does not fit its names is refused: %#", (request, what) => {
  expect(assignTopic.run(request)).toMatchObject({ ok: false, fault: { code: "out-of-range", what } });
});
