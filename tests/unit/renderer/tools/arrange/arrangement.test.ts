import { expect, test } from "vitest";
import type { Route } from "../../../../../core/model/route.ts";
import { stationM } from "../../../../../core/plant/cablePath.ts";
import { planeDistanceM } from "../../../../../core/plant/geometry.ts";
import { openPlant } from "../../../../../core/plant/plant.ts";
import type { RefKey } from "../../../../../renderer/app/ref.ts";
import { arrangementOf } from "../../../../../renderer/tools/arrange/arrangement.ts";
import { type Arranging, plainArranging, waysFor } from "../../../../../renderer/tools/arrange/arranging.ts";
import { changed, smallRoute, without } from "../../../../fixtures/route/buildRoute.ts";

const seven = smallRoute({ poleCount: 7 });
const terminals = [1, 2, 3, 4, 5].map((n): RefKey => `terminal/terminal-${n}`);
const poles = [1, 2, 3, 4, 5, 6, 7].map((n): RefKey => `pole/pole-${n}`);

function arranged(route: Route, selection: readonly RefKey[], asked: Partial<Arranging>) {
  return arrangementOf(openPlant(route), selection, { ...plainArranging, ...asked }, "us");
}

/** Rows as they would be, where it can be done. */
function rowsAfter(route: Route, selection: readonly RefKey[], asked: Partial<Arranging>) {
  const done = arranged(route, selection, asked);
  if (!done.isReady) throw new Error(done.reason);
  return {
    terminals: done.rows.flatMap((row) => (row.table === "terminal" && row.after ? [row.after] : [])),
    poles: done.rows.flatMap((row) => (row.table === "pole" && row.after ? [row.after] : [])),
  };
}

test("terminals chosen in any order come to hang equally far along their cable, the outer two unmoved", () => {
  const route = changed(seven, "terminal", "terminal-5", { offsetM: 30 });
  const order = [terminals[2], terminals[4], terminals[0], terminals[1], terminals[3]].flatMap((one) => one ?? []);
  const { terminals: moved } = rowsAfter(route, order, { way: "spaceTerminals" });
  const plant = openPlant(route);
  const atM = [...route.terminal.values()]
    .map((one) => moved.find((other) => other.id === one.id) ?? one)
    .map((one) => stationM(plant, "cable-1", one.spanId, one.offsetM) ?? Number.NaN);
  const apartM = atM.slice(1).map((one, i) => one - (atM[i] ?? 0));
  expect(Math.max(...apartM) - Math.min(...apartM)).toBeLessThan(1e-9);
  expect(moved.map((one) => one.id).sort()).toEqual(["terminal-2", "terminal-3", "terminal-4"]);
});

test("terminals of two cables are not spaced together", () => {
  const route = changed(seven, "terminal", "terminal-5", { cableId: "cable-other" });
  expect(arranged(route, terminals, { way: "spaceTerminals" })).toMatchObject({
    isReady: false,
    reason: "These terminals hang on different cables; choose those of one.",
  });
});

test("one distance is kept from the pole each terminal hangs beside, and nothing typed means the standard one", () => {
  const route = changed(seven, "terminal", "terminal-2", { offsetM: 43 });
  const typed = rowsAfter(route, terminals.slice(0, 2), { way: "alignTerminals", distance: "4 ft" });
  expect(typed.terminals.map((one) => one.offsetM)).toEqual([1.2192, 45 - 1.2192]);
  const standard = rowsAfter(route, terminals.slice(1, 2), { way: "alignTerminals" });
  expect(standard.terminals).toMatchObject([{ offsetM: 45 - 0.9144 }]);
  expect(arranged(route, terminals, { way: "alignTerminals", distance: "rather far" }).isReady).toBe(false);
});

test("turned terminals change the side of their pole, and one that cannot be turned leaves all as they are", () => {
  const turned = rowsAfter(seven, terminals.slice(1, 3), { way: "turnTerminals" });
  expect(turned.terminals.map((one) => one.spanId)).toEqual(["span-2", "span-3"]);
  const end = changed(seven, "terminal", "terminal-1", { spanId: "span-1", offsetM: 0.9144 });
  const refused = arranged(end, terminals.slice(0, 3), { way: "turnTerminals" });
  expect(refused).toMatchObject({ isReady: false, rows: [] });
  expect(!refused.isReady && refused.reason).toMatch(/^The cable ends at pole P1/);
});

test("poles spaced evenly have equal spans, in a straight line they stand on it", () => {
  const bent = changed(changed(seven, "pole", "pole-3", { northM: 9 }), "pole", "pole-5", { eastM: 188 });
  const spaced = rowsAfter(bent, poles.slice(1, 6), { way: "spacePoles" });
  const all = [...bent.pole.values()].slice(1, 6).map((one) => spaced.poles.find(({ id }) => id === one.id) ?? one);
  const spansM = all.slice(1).map((one, i) => planeDistanceM(all[i] ?? one, one));
  expect(Math.max(...spansM) - Math.min(...spansM)).toBeLessThan(0.001);
  const straight = rowsAfter(bent, poles.slice(1, 4), { way: "linePoles" });
  expect(straight.poles).toMatchObject([{ id: "pole-3", northM: 0 }]);
});

test("poles that leave one out between are no line", () => {
  const broken = poles.filter((ref) => ref !== "pole/pole-4");
  expect(arranged(seven, broken, { way: "spacePoles" }).isReady).toBe(false);
});

test("every other chosen pole gets a terminal, one that has it already is passed over and told", () => {
  const bare = [2, 4].reduce((route, n) => {
    const stripped = ["splitter", "slack"].reduce((one, table) => {
      const rows = table === "splitter" ? one.splitter : one.slack;
      const own = [...rows.values()].filter((row) => row.terminalId === `terminal-${n}`);
      return own.reduce((left, row) => without(left, table === "splitter" ? "splitter" : "slack", row.id), one);
    }, route);
    return without(stripped, "terminal", `terminal-${n}`);
  }, seven);
  const done = arranged(bare, poles.slice(0, 6), { way: "hangAlong", everyNth: 2, startAt: 1 });
  if (!done.isReady) throw new Error(done.reason);
  expect(done.words).toBe("3 terminals at 3 poles");
  const hung = done.rows.flatMap((row) => (row.table === "terminal" && row.after ? [row.after] : []));
  expect(hung.map((one) => one.spanId)).toEqual(["span-1", "span-3", "span-5"]);
  const again = arranged(bare, poles.slice(0, 6), { way: "hangAlong", everyNth: 1, startAt: 2 });
  expect(again.isReady && again.words).toBe("2 terminals at 5 poles; 3 poles passed over with a terminal already");
});

test("only ways that have something to arrange are offered", () => {
  expect(waysFor([])).toEqual([]);
  expect(waysFor(["terminal/terminal-1"])).toEqual(["alignTerminals", "turnTerminals", "hangAlong"]);
  expect(waysFor(poles)).toEqual(["spacePoles", "linePoles", "hangAlong"]);
  expect(waysFor(["livingUnit/unit-1"])).toEqual([]);
  expect(waysFor(terminals.slice(0, 2))).toContain("evenTerminals");
  expect(waysFor(["livingUnit/unit-1", "terminal/terminal-2"])).toContain("serveFrom");
});

const near = smallRoute({ settings: { dropReachM: 200 } });
const pair = terminals.slice(0, 2);

test("two terminals are evened out by moving drops, and what it costs is said before", () => {
  const crowded = changed(near, "drop", "drop-3", { terminalId: "terminal-1", port: 3 });
  const done = arranged(crowded, pair, { way: "evenTerminals" });
  if (!done.isReady) throw new Error(done.reason);
  expect(done.label).toBe("Even out 2 terminals");
  expect(done.words).toMatch(/^1 drop to another terminal, together .* shorter; ports in use 2, 1 instead of 3, 0$/);
  expect(done.rows.filter((row) => row.table === "drop")).not.toEqual([]);
});

test("terminals that no length allowed makes evener are said to be so", () => {
  expect(arranged(near, pair, { way: "evenTerminals" })).toMatchObject({
    isReady: false,
    reason: "They are as evenly filled as reach, pins, spare ports and this length allow.",
  });
  const far = changed(near, "drop", "drop-2", { terminalId: "terminal-2", port: 2 });
  const both = changed(far, "drop", "drop-1", { terminalId: "terminal-2", port: 3 });
  expect(arranged(both, pair, { way: "evenTerminals", longer: "x" }).isReady).toBe(false);
  expect(arranged(both, pair, { way: "evenTerminals", longer: "0 ft" }).isReady).toBe(true);
});

test("chosen units and drops come to be served from the one terminal chosen with them", () => {
  const done = arranged(near, ["livingUnit/unit-1", "drop/drop-2", "terminal/terminal-2"], { way: "serveFrom" });
  if (!done.isReady) throw new Error(done.reason);
  expect(done.words).toMatch(/^2 drops to terminal T2, together .* longer$/);
  expect(done.rows.map((row) => row.after)).toMatchObject([
    { id: "drop-1", terminalId: "terminal-2" },
    { id: "drop-2", terminalId: "terminal-2" },
  ]);
  const there: readonly RefKey[] = ["livingUnit/unit-3", "terminal/terminal-2"];
  expect(arranged(near, there, { way: "serveFrom" })).toMatchObject({
    reason: "They are served from this terminal already.",
  });
  expect(arranged(near, pair, { way: "serveFrom" })).toMatchObject({
    reason: "Choose one terminal and the living units or drops to serve from it.",
  });
});

test("more drops than the terminal has free ports are refused with the reason", () => {
  const small = changed(near, "terminalModel", "terminal-8", { portCount: 1 });
  const done = arranged(small, ["livingUnit/unit-1", "terminal/terminal-2"], { way: "serveFrom" });
  expect(done).toMatchObject({
    isReady: false,
    reason: expect.stringContaining("has 0 of its 1 ports free for 1 more."),
  });
});
