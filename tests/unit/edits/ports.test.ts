import { describe, expect, test } from "vitest";
import { granted, refusal } from "../../fixtures/layout/asking.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { tapChain } from "../../fixtures/route/faultyRoutes.ts";

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

describe("drops plugged together", () => {
  const plug = (...plugs: (readonly [string, number])[]) => ({
    plugs: plugs.map(([dropId, port]) => ({ dropId, port })),
  });

  test("take each other's ports in one edit", () => {
    const route = granted(smallRoute(), "drops.plug", plug(["drop-1", 2], ["drop-2", 1]));
    expect(["drop-1", "drop-2"].map((id) => route.drop.get(id)?.port)).toEqual([2, 1]);
  });

  test("may not share a port, take one that stays held, or one the face does not have", () => {
    const code = (...plugs: (readonly [string, number])[]) => refusal(smallRoute(), "drops.plug", plug(...plugs)).code;
    expect(code(["drop-1", 3], ["drop-2", 3])).toBe("port-taken");
    expect(code(["drop-1", 2])).toBe("port-taken");
    expect(code(["drop-1", 9])).toBe("no-port");
    expect(code(["drop-gone", 3])).toBe("missing-row");
  });
});

describe("reserved ports", () => {
  const reserve = (count: number) => ({
    terminalId: "terminal-2",
    reservedPortCount: count,
    reservedFor: "vacant lot",
  });

  test("are held for whoever comes later, as many as are free", () => {
    const route = granted(smallRoute(), "terminal.reserve", reserve(7));
    expect(route.terminal.get("terminal-2")).toMatchObject({ reservedPortCount: 7, reservedFor: "vacant lot" });
    expect(refusal(smallRoute(), "terminal.reserve", reserve(8))).toMatchObject({
      code: "too-few-ports",
      what: "Terminal T2 has 7 of its 8 ports free; 8 cannot be reserved.",
    });
  });

  test("take no drop once they are all that is free, alone or in a block", () => {
    const route = granted(smallRoute(), "terminal.reserve", reserve(7));
    const one = refusal(route, "drop.move", { dropId: "drop-2", terminalId: "terminal-2", port: 8 });
    expect(one).toMatchObject({
      code: "port-reserved",
      what: "The last 7 free ports of terminal T2 are reserved for vacant lot.",
    });
    const block = refusal(route, "drops.move", { dropIds: ["drop-1", "drop-2"], terminalId: "terminal-2" });
    expect(block).toMatchObject({
      code: "too-few-ports",
      what: "Terminal T2 has 0 of its 8 ports free for 2 more; 7 reserved.",
    });
    expect(refusal(route, "terminal.resize", { terminalId: "terminal-2", terminalModelId: "terminal-4" }).code).toBe(
      "too-few-ports",
    );
  });

  test("let a drop of their own terminal change its port, and one come where another port is spare", () => {
    const full = granted(smallRoute(), "terminal.reserve", reserve(7));
    const [own] = [...full.drop.values()].filter((drop) => drop.terminalId === "terminal-2");
    expect(own && granted(full, "drop.move", { dropId: own.id, terminalId: "terminal-2", port: 5 })).toBeTruthy();
    const some = granted(smallRoute(), "terminal.reserve", reserve(6));
    expect(granted(some, "drop.move", { dropId: "drop-2", terminalId: "terminal-2", port: 2 })).toBeTruthy();
  });
});

describe("drops together", () => {
  test("move to another terminal in one edit, each to a free port", () => {
    const route = granted(smallRoute(), "drops.move", { dropIds: ["drop-1", "drop-2"], terminalId: "terminal-2" });
    const moved = ["drop-1", "drop-2"].map((id) => route.drop.get(id));
    expect(moved).toMatchObject([{ terminalId: "terminal-2" }, { terminalId: "terminal-2" }]);
    expect(new Set(moved.map((one) => one?.port)).size).toBe(2);
  });

  test("that would be more than a terminal has free ports are refused", () => {
    const small = changed(smallRoute(), "terminalModel", "terminal-8", { portCount: 1 });
    const input = { dropIds: ["drop-1", "drop-2"], terminalId: "terminal-2" };
    expect(refusal(small, "drops.move", input)).toMatchObject({ code: "too-few-ports" });
  });

  test("are evened out over terminals in reach, pinned ones apart", () => {
    const near = changed(smallRoute(), "settings", "settings", { dropReachM: 500, sparePortCount: 0 });
    const pinned = changed(near, "drop", "drop-1", { pinned: true });
    const counts = (route: typeof near) =>
      ["terminal-1", "terminal-2"].map((id) => [...route.drop.values()].filter((one) => one.terminalId === id).length);
    const crowded = granted(pinned, "drops.move", {
      dropIds: [...pinned.drop.keys()].slice(1),
      terminalId: "terminal-1",
    });
    const done = granted(crowded, "drops.even", { extraDropM: 1000 });
    expect(done.drop.get("drop-1")).toEqual(crowded.drop.get("drop-1"));
    const [a = 0, b = 0] = counts(done);
    expect(Math.abs(a - b)).toBeLessThanOrEqual(1);
  });

  test("of a terminal that is gone are refused", () => {
    expect(refusal(smallRoute(), "drops.even", { terminalIds: ["terminal-1", "gone"], extraDropM: 0 }).code).toBe(
      "missing-row",
    );
    expect(refusal(smallRoute(), "drops.move", { dropIds: ["gone"], terminalId: "terminal-1" }).code).toBe(
      "missing-row",
    );
  });
});

describe("fiber beyond the tap of a terminal", () => {
  const given = { ...free, fiberUseId: "use-2", fiber: 1, terminalId: "terminal-2", splitterId: "splitter-2" };

  test("is given to a terminal farther out where the company uses it again", () => {
    const bare = granted(tapChain({ deadLength: "reused" }), "fiber.free", { fiberUseId: "use-2" });
    expect(granted(bare, "fiber.give", { ...given, feedId: "feed-1" }).fiberUse.get("use-2")).toMatchObject({
      fiber: 1,
    });
  });

  test("is in use where the company leaves it dark, and where no tap sends light on", () => {
    const dark = granted(tapChain({ deadLength: "left" }), "fiber.free", { fiberUseId: "use-2" });
    expect(refusal(dark, "fiber.give", given).code).toBe("fiber-taken");
    const cut = granted(smallRoute({ settings: { deadLength: "reused" } }), "fiber.free", { fiberUseId: "use-2" });
    expect(refusal(cut, "fiber.give", given).code).toBe("fiber-taken");
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
