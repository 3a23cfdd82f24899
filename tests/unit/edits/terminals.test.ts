import { describe, expect, test } from "vitest";
import { granted, refusal } from "../../fixtures/layout/asking.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

const hang = { terminalId: "terminal-9", spanId: "span-1", poleId: "pole-2", terminalModelId: "terminal-16" };

describe("hanging a terminal", () => {
  test("at the standard distance from its pole, with splitters over its ports and a coil for its opening", () => {
    const route = granted(smallRoute(), "terminal.hang", hang);
    expect(route.terminal.get("terminal-9")).toEqual({
      id: "terminal-9",
      name: "T-9",
      terminalModelId: "terminal-16",
      cableId: "cable-1",
      spanId: "span-1",
      offsetM: 45 - 0.9144,
      pinned: false,
      reason: "",
      reservedPortCount: 0,
      reservedFor: "",
    });
    expect(route.splitter.get("terminal-9-splitter-2")).toMatchObject({ position: 2, firstPort: 9 });
    expect(route.slack.get("terminal-9-coil")).toMatchObject({ offsetM: 45 - 0.9144, storedM: 6.096, kind: "access" });
  });

  test("turns to the other side of the pole where a terminal hangs, and says so", () => {
    const route = granted(smallRoute(), "terminal.hang", { ...hang, spanId: "span-2" });
    expect(route.terminal.get("terminal-9")).toMatchObject({
      spanId: "span-1",
      offsetM: 45 - 0.9144,
      reason: "First choice, pole P2 toward pole P3: terminal T1 hangs there; hung on the other side of the pole.",
    });
  });

  test("goes to the next pole where its own pole allows none", () => {
    const forbidden = changed(smallRoute(), "pole", "pole-2", { terminalAllowed: false });
    const terminal = granted(forbidden, "terminal.hang", hang).terminal.get("terminal-9");
    expect(terminal).toMatchObject({ spanId: "span-1", offsetM: 0.9144 });
    expect(terminal?.reason).toContain("no terminal may hang beside pole P2; hung at pole P1 instead");
  });

  test("is refused with the reason where neither pole has room", () => {
    const forbidden = ["pole-1", "pole-2"].reduce(
      (route, id) => changed(route, "pole", id, { terminalAllowed: false }),
      smallRoute(),
    );
    expect(refusal(forbidden, "terminal.hang", hang)).toMatchObject({ code: "no-room", where: "pole-2" });
  });

  test("is refused where no cable runs", () => {
    const bare = without(smallRoute(), "cableRun", "run-1");
    expect(refusal(bare, "terminal.hang", hang).code).toBe("no-cable");
  });

  test("keeps clear of a closure", () => {
    const row = { id: "closure-1", name: "C-1", cableId: "cable-1", spanId: "span-1", offsetM: 44, note: "" };
    const terminal = granted(withRows(smallRoute(), "closure", [row]), "terminal.hang", hang).terminal.get(
      "terminal-9",
    );
    expect(terminal?.reason).toContain("closure C-1 hangs there");
  });
});

describe("moving and turning", () => {
  test("the coil goes along", () => {
    const route = granted(smallRoute(), "terminal.move", { terminalId: "terminal-1", spanId: "span-1", offsetM: 10 });
    expect(route.terminal.get("terminal-1")).toMatchObject({ spanId: "span-1", offsetM: 10 });
    expect(route.slack.get("coil-1")).toMatchObject({ spanId: "span-1", offsetM: 10 });
  });

  test("a terminal does not go past the far pole", () => {
    const input = { terminalId: "terminal-1", spanId: "span-1", offsetM: 45 };
    expect(refusal(smallRoute(), "terminal.move", input).code).toBe("off-span");
  });

  test("a terminal stays on the cable that feeds it", () => {
    const bare = without(smallRoute(), "cableRun", "run-1");
    const input = { terminalId: "terminal-1", spanId: "span-1", offsetM: 10 };
    expect(refusal(bare, "terminal.move", input).code).toBe("off-cable");
  });

  test("turning puts a terminal as far on the other side of its pole", () => {
    const route = granted(smallRoute(), "terminal.turn", { terminalId: "terminal-1" });
    expect(route.terminal.get("terminal-1")).toMatchObject({ spanId: "span-1", offsetM: 45 - 0.9144 });
  });

  test("turning is refused with the reason where the other side is taken", () => {
    const taken = granted(smallRoute(), "terminal.hang", hang);
    const fault = refusal(taken, "terminal.turn", { terminalId: "terminal-1" });
    expect(fault).toMatchObject({ code: "no-room" });
    expect(fault.what).toContain("terminal T-9 hangs there");
  });

  test("turning is refused where the cable ends at the pole", () => {
    const end = granted(smallRoute(), "terminal.hang", { ...hang, poleId: "pole-1" });
    expect(refusal(end, "terminal.turn", { terminalId: "terminal-9" }).code).toBe("no-side");
  });
});

describe("another size", () => {
  test("keeps drops on their ports and the fiber on its splitter", () => {
    const route = granted(smallRoute(), "terminal.resize", {
      terminalId: "terminal-1",
      terminalModelId: "terminal-16",
    });
    expect([...route.splitter.values()].filter((one) => one.terminalId === "terminal-1")).toHaveLength(2);
    expect(route.drop.get("drop-2")).toMatchObject({ terminalId: "terminal-1", port: 2 });
    expect(route.fiberUse.get("use-1")?.splitterId).toBe("terminal-1-splitter-1");
  });

  test("moves a drop whose port the smaller face lacks to the lowest free one", () => {
    const high = changed(smallRoute(), "drop", "drop-2", { port: 8 });
    const route = granted(high, "terminal.resize", { terminalId: "terminal-1", terminalModelId: "terminal-4" });
    expect(route.drop.get("drop-2")?.port).toBe(2);
  });

  test("is refused where there are more drops than ports", () => {
    const model = smallRoute().terminalModel.get("terminal-4");
    if (!model) throw new Error("no model");
    const tiny = withRows(smallRoute(), "terminalModel", [{ ...model, id: "terminal-1-port", portCount: 1 }]);
    const input = { terminalId: "terminal-1", terminalModelId: "terminal-1-port" };
    expect(refusal(tiny, "terminal.resize", input).code).toBe("too-few-ports");
  });
});

test("removing a terminal takes its splitter, coil, fiber and drops along and leaves the others'", () => {
  const route = granted(smallRoute(), "terminal.remove", { terminalId: "terminal-1" });
  expect([...route.splitter.keys(), ...route.slack.keys(), ...route.fiberUse.keys(), ...route.drop.keys()]).toEqual([
    "splitter-2",
    "coil-2",
    "use-2",
    "drop-3",
  ]);
});
