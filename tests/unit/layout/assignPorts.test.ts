import { expect, test } from "vitest";
import { assignPorts, type HeldPort } from "../../../core/layout/assignPorts.ts";
import type { LivingUnit } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());
const at = { eastM: 0, northM: 0 };

function unit(id: string, eastM: number, northM: number): LivingUnit {
  return { id, address: id, eastM, northM, kind: "home", building: "", attachHeightM: null, groundM: null, note: "" };
}

function ports(
  units: readonly LivingUnit[],
  held: readonly HeldPort[] = [],
  bearingRad = 0,
  reserved: readonly number[] = [],
): Record<string, number> {
  const given = assignPorts(plant, "terminal-4", at, bearingRad, units, held, new Set(reserved));
  return Object.fromEntries(given.map((one) => [one.livingUnitId, one.port]));
}

test("drops leave the face from left to right as their units lie along the strand", () => {
  expect(ports([unit("ahead", 30, 10), unit("behind", -30, -10), unit("beside", 2, 20)])).toEqual({
    behind: 1,
    beside: 2,
    ahead: 3,
  });
});

test("the same units seen along a strand that runs the other way come in the other order", () => {
  expect(ports([unit("west", -30, 10), unit("east", 30, 10)], [], Math.PI)).toEqual({ east: 1, west: 2 });
});

test("of two units at one angle the nearer comes first", () => {
  expect(ports([unit("far", 0, 40), unit("near", 0, 20)])).toEqual({ near: 1, far: 2 });
});

test("reserved ports are passed over, and a unit too many gets none", () => {
  const units = [unit("a", -10, 5), unit("b", 10, 5), unit("c", 20, 5)];
  expect(ports(units, [], 0, [1, 4])).toEqual({ a: 2, b: 3 });
});

test("ports of decided drops are passed over and spares stay at the end", () => {
  const held = [{ port: 1, unit: { eastM: -20, northM: 5 } }];
  expect(ports([unit("a", -10, 5), unit("b", 10, 5)], held)).toEqual({ a: 2, b: 3 });
});

test("a unit ahead of a decided drop leaves the face ahead of it, and one behind it behind it", () => {
  const held = [{ port: 2, unit: { eastM: 0, northM: 20 } }];
  expect(ports([unit("ahead", 30, 10)], held)).toEqual({ ahead: 3 });
  expect(ports([unit("ahead", 30, 10), unit("behind", -30, 10)], held)).toEqual({ behind: 1, ahead: 3 });
});

test("where crossing cannot be helped the lowest ports are used", () => {
  const held = [{ port: 4, unit: { eastM: -30, northM: 1 } }];
  expect(ports([unit("ahead", 30, 10)], held)).toEqual({ ahead: 1 });
});

test("units beyond the last free port get none", () => {
  const units = [-40, -20, 0, 20, 40].map((eastM) => unit(`at ${eastM}`, eastM, 10));
  expect(Object.values(ports(units))).toEqual([1, 2, 3, 4]);
});

test("a face of two ranks is filled along both ranks together", () => {
  const units = [-40, -20, 20, 40].map((eastM) => unit(`at ${eastM}`, eastM, 10));
  const given = assignPorts(plant, "terminal-8", at, 0, [...units, unit("beside", 0, 10)], [], new Set());
  expect(given.map((one) => one.port)).toEqual([1, 5, 2, 3, 4]);
});
