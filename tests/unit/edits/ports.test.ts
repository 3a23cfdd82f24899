import { describe, expect, test } from "vitest";
import { granted, refusal } from "../../fixtures/layout/asking.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

const free = {
  fiberUseId: "use-9",
  cableId: "cable-1",
  terminalId: "terminal-1",
  splitterId: "splitter-1",
  feedId: null,
};

describe("drops", () => {
  test("a port serves one drop", () => {
    const fault = refusal(smallRoute(), "drop.move", { dropId: "drop-2", terminalId: "terminal-1", port: 1 });
    expect(fault).toMatchObject({ code: "port-taken", what: "Port 1 of terminal T1 serves 1 Test Rd." });
  });

  test("a terminal of eight has no ninth port", () => {
    const input = { dropId: "drop-2", terminalId: "terminal-1", port: 9 };
    expect(refusal(smallRoute(), "drop.move", input).code).toBe("no-port");
  });

  test("a living unit that is served gets no second drop", () => {
    const input = { dropId: "drop-9", terminalId: "terminal-2", port: 5, livingUnitId: "unit-1" };
    expect(refusal(smallRoute(), "drop.add", input)).toMatchObject({
      code: "served",
      what: "1 Test Rd is served already, from T1 port 1.",
    });
  });

  test("a drop moves to a free port of another terminal", () => {
    const route = granted(smallRoute(), "drop.move", { dropId: "drop-2", terminalId: "terminal-2", port: 3 });
    expect(route.drop.get("drop-2")).toMatchObject({ terminalId: "terminal-2", port: 3 });
  });
});

describe("fibers", () => {
  test("a fiber in use is not given twice", () => {
    const bare = granted(smallRoute(), "fiber.free", { fiberUseId: "use-1" });
    expect(refusal(bare, "fiber.give", { ...free, fiber: 2 })).toMatchObject({ code: "fiber-taken", where: "use-2" });
    expect(granted(bare, "fiber.give", { ...free, fiber: 1 }).fiberUse.get("use-9")).toMatchObject({ fiber: 1 });
  });

  test("a splitter takes one fiber; the same use may move to another", () => {
    expect(refusal(smallRoute(), "fiber.give", { ...free, fiber: 5 }).code).toBe("splitter-lit");
    const route = granted(smallRoute(), "fiber.give", { ...free, fiberUseId: "use-1", fiber: 5 });
    expect(route.fiberUse.get("use-1")).toMatchObject({ fiber: 5, purpose: "terminal" });
  });

  test("a cable of 48 has no fiber 49", () => {
    const input = { ...free, fiberUseId: "use-1", fiber: 49 };
    expect(refusal(smallRoute(), "fiber.give", input).code).toBe("no-fiber");
  });

  test("a cable is not made smaller than its highest fiber in use", () => {
    const high = changed(smallRoute(), "fiberUse", "use-2", { fiber: 13 });
    expect(refusal(high, "cable.resize", { cableId: "cable-1", cableTypeId: "cable-type-12" })).toMatchObject({
      code: "fibers-in-use",
      what: "Fiber 13 of cable C1 is in use and 12 fibers has 12.",
    });
    const small = granted(smallRoute(), "cable.resize", { cableId: "cable-1", cableTypeId: "cable-type-12" });
    expect(small.cable.get("cable-1")?.cableTypeId).toBe("cable-type-12");
  });
});

describe("waivers", () => {
  const waiver = { waiverId: "waiver-1", ruleId: "spare-ports", subjects: "terminal-1", reason: "agreed", by: "Ann" };

  test("a finding is waived once", () => {
    const route = granted(smallRoute(), "finding.waive", { ...waiver, atIso: "2030-01-01" });
    const again = { ...waiver, waiverId: "waiver-2", atIso: "2030-01-02" };
    expect(refusal(route, "finding.waive", again)).toMatchObject({ code: "waived", where: "waiver-1" });
  });
});

describe("coils", () => {
  test("a coil hangs only where its cable passes", () => {
    const span = smallRoute().span.get("span-1");
    if (!span) throw new Error("no span");
    const route = withRows(smallRoute(), "span", [{ ...span, id: "span-9", toPoleId: "pole-4" }]);
    expect(refusal(route, "slack.move", { slackId: "coil-1", spanId: "span-9", offsetM: 3 }).code).toBe("off-cable");
  });
});
