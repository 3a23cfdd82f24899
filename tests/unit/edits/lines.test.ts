import { expect, test } from "vitest";
import { cablePath, stationM } from "../../../core/plant/cablePath.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { granted, labelOf, refusal } from "../../fixtures/layout/asking.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

const split = { spanId: "span-2", poleId: "pole-9", tag: "P9", offsetM: 20, nextSpanId: "span-9" };

test("splitting a span sets a pole into it and gives both halves their lengths", () => {
  const route = granted(smallRoute(), "span.split", split);
  expect(route.pole.get("pole-9")).toMatchObject({ tag: "P9", eastM: 65, northM: 0, groundM: null });
  expect(route.span.get("span-2")).toMatchObject({ fromPoleId: "pole-2", toPoleId: "pole-9", lengthM: 20 });
  expect(route.span.get("span-9")).toMatchObject({ fromPoleId: "pole-9", toPoleId: "pole-3", lengthM: 25 });
  expect([...route.attachment.values()].filter((one) => one.poleId === "pole-9").map((one) => one.kind)).toEqual([
    "ourStrand",
  ]);
});

test("what hangs past the new pole hangs in the new span at the same place of the ground", () => {
  const closure = { id: "closure-1", name: "C-1", cableId: "cable-1", spanId: "span-2", offsetM: 40, note: "" };
  const route = granted(withRows(smallRoute(), "closure", [closure]), "span.split", split);
  expect(route.terminal.get("terminal-1")).toMatchObject({ spanId: "span-2", offsetM: 0.9144 });
  expect(route.slack.get("coil-1")).toMatchObject({ spanId: "span-2" });
  expect(route.closure.get("closure-1")).toMatchObject({ spanId: "span-9", offsetM: 20 });
  expect(route.crossing.get("crossing-1")).toMatchObject({ spanId: "span-9", offsetM: 2.5 });
});

test.each([false, true])("a cable runs through both halves in its own direction (reversed: %s)", (isTurned) => {
  const before = isTurned ? granted(smallRoute(), "cable.reverse", { cableId: "cable-1" }) : smallRoute();
  const path = cablePath(openPlant(granted(before, "span.split", split)), "cable-1");
  const forward = ["span-1", "span-2", "span-9", "span-3"];
  expect(path.steps.map((one) => one.spanId)).toEqual(isTurned ? forward.reverse() : forward);
  expect(path).toMatchObject({ lengthM: 135, gapAtPoleId: null });
});

test("no pole is set where a terminal hangs, nor past the span", () => {
  const route = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 20.1 });
  expect(refusal(route, "span.split", split)).toMatchObject({ code: "place-taken", where: "terminal-1" });
  expect(refusal(smallRoute(), "span.split", { ...split, offsetM: 45 }).code).toBe("off-span");
  expect(refusal(smallRoute(), "span.split", { ...split, poleId: "pole-1" }).code).toBe("taken-id");
});

test("joining at the pole of a split brings the line back", () => {
  const before = smallRoute();
  const route = granted(granted(before, "span.split", split), "span.join", { poleId: "pole-9" });
  expect(route.pole).toEqual(before.pole);
  expect(route.cableRun).toEqual(before.cableRun);
  expect(route.span).toEqual(before.span);
  expect(route.attachment).toEqual(before.attachment);
  expect(route.crossing.get("crossing-1")?.offsetM).toBeCloseTo(22.5, 9);
});

test("taking a pole out joins its spans, and what hung on them keeps its station", () => {
  const before = smallRoute();
  const route = granted(before, "span.join", { poleId: "pole-3" });
  expect(route.span.get("span-2")).toMatchObject({ fromPoleId: "pole-2", toPoleId: "pole-4", lengthM: 90 });
  expect(route.span.has("span-3")).toBe(false);
  const stations = [before, route].map((one) => {
    const { spanId, offsetM } = one.terminal.get("terminal-2") ?? { spanId: "", offsetM: 0 };
    return stationM(openPlant(one), "cable-1", spanId, offsetM);
  });
  expect(stations[1]).toBeCloseTo(stations[0] ?? Number.NaN, 9);
});

test("a span joined across a corner is as long as its poles stand apart, and a terminal keeps its distance from its pole", () => {
  const bent = granted(smallRoute(), "pole.move", { poleId: "pole-2", eastM: 0, northM: 45 });
  const straight = granted(bent, "pole.move", { poleId: "pole-3", eastM: 45, northM: 45 });
  const route = granted(straight, "span.join", { poleId: "pole-2" });
  expect(route.span.get("span-1")?.lengthM).toBeCloseTo(Math.hypot(45, 45), 9);
  expect(route.terminal.get("terminal-2")).toEqual(straight.terminal.get("terminal-2"));
});

test("a pole where the line ends or branches stays", () => {
  expect(refusal(smallRoute(), "span.join", { poleId: "pole-1" }).code).toBe("not-in-line");
  const town = strungTown({ poleCount: 4, laterals: [{ atPole: 2, poleCount: 2 }] });
  const codes = [...town.pole.keys()].map((poleId) => openPlant(town).where("span", "fromPoleId", poleId).length);
  const junction = [...town.pole.keys()][codes.indexOf(2)] ?? "";
  expect(refusal(town, "span.join", { poleId: junction }).code).toBe("not-in-line");
  const other = { ...smallRoute().strandSection.get("section-1"), id: "section-2" };
  const two = withRows(smallRoute(), "strandSection", [other as never]); // a copy of a row with another id
  const ended = changed(two, "span", "span-2", { strandSectionId: "section-2" });
  expect(refusal(ended, "span.join", { poleId: "pole-2" }).code).toBe("dead-end");
});

test("a reversed cable is fed from its other end", () => {
  const route = granted(smallRoute(), "cable.reverse", { cableId: "cable-1" });
  const plant = openPlant(route);
  expect(cablePath(plant, "cable-1").steps.map((one) => one.inPoleId)).toEqual(["pole-4", "pole-3", "pole-2"]);
  expect(stationM(plant, "cable-1", "span-3", 0.9144)).toBeCloseTo(45 - 0.9144, 9);
  expect(granted(route, "cable.reverse", { cableId: "cable-1" }).cableRun).toEqual(smallRoute().cableRun);
  expect(labelOf(route, "cable.reverse", { cableId: "cable-1" })).toBe("Reverse cable C1");
});

test("a lateral is not turned away from the closure it is spliced on at", () => {
  const town = strungTown({ poleCount: 4, laterals: [{ atPole: 2, poleCount: 2 }] });
  const lateral = [...town.cable.values()].find((one) => one.fromClosureId !== null);
  expect(refusal(town, "cable.reverse", { cableId: lateral?.id }).code).toBe("spliced-on");
});

const extension = {
  fromPoleId: "pole-4",
  poleId: "pole-9",
  tag: "P9",
  eastM: 135,
  northM: 40,
  line: "",
  spanId: "span-9",
};

test("a pole set after the last one extends strand and cable to it", () => {
  const route = granted(smallRoute(), "pole.extend", extension);
  expect(route.span.get("span-9")).toMatchObject({ lengthM: 40, strandSectionId: "section-1", origin: "drawn" });
  expect(cablePath(openPlant(route), "cable-1").steps.at(-1)).toMatchObject({ spanId: "span-9", startM: 135 });
  expect(openPlant(route).where("attachment", "poleId", "pole-9")).toHaveLength(1);
});

test("a lateral from the middle of a line, or a line of another name, begins without strand", () => {
  const off = granted(smallRoute(), "pole.extend", { ...extension, fromPoleId: "pole-2", line: "Mill Lane" });
  expect(off.pole.get("pole-9")?.line).toBe("Mill Lane");
  expect(off.span.get("span-9")?.strandSectionId).toBeNull();
  const named = granted(smallRoute(), "pole.extend", { ...extension, line: "Mill Lane" });
  expect(named.cableRun.size).toBe(smallRoute().cableRun.size);
});

test("nothing goes on from the feed end of a cable but the strand", () => {
  const route = granted(smallRoute(), "pole.extend", { ...extension, fromPoleId: "pole-1", eastM: -40, northM: 0 });
  expect(route.span.get("span-9")?.strandSectionId).toBe("section-1");
  expect(route.cableRun).toEqual(smallRoute().cableRun);
  const there = { ...extension, eastM: 135, northM: 0 };
  expect(refusal(smallRoute(), "pole.extend", there).code).toBe("no-length");
});
