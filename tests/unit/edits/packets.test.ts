import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { rivalId } from "../../../core/edits/packet/readOfThing.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

const signed = { by: "Office", atIso: "2030-05-01T08:00:00Z" };
const give = {
  packetId: "packet-1",
  crew: "North",
  terminalIds: ["terminal-1"],
  wavelengthsNm: [1310, 1550],
  ...signed,
};
const offset = { kind: "terminal", subjectId: "terminal-1", port: 0, alongId: "", what: "offset", wavelengthNm: 0 };
const id = "terminal terminal-1 offset";

test("a packet given issues its terminals, and packets are numbered as they are given", () => {
  const once = asked(smallRoute(), "packet.give", give);
  const twice = asked(once, "packet.give", { ...give, packetId: "packet-2", crew: "South" });
  expect([...twice.packet.values()].map(({ number, crew }) => [number, crew])).toEqual([
    [1, "North"],
    [2, "South"],
  ]);
  expect(twice.packet.get("packet-2")?.wavelengthsNm).toBe("1310 1550");
  expect([...twice.milestone.keys()]).toEqual(["terminal terminal-1 issued"]);
});

test("a terminal that is built stays built when it is given to a crew again", () => {
  const subjects = [{ kind: "terminal", subjectId: "terminal-1", port: 0, alongId: "" }];
  const built = asked(smallRoute(), "milestone.reach", { subjects, state: "built", ...signed });
  expect(asked(built, "packet.give", give).milestone).toEqual(built.milestone);
});

test("a packet is not given of a terminal that is not there, nor twice under one id", () => {
  expect(code(smallRoute(), "packet.give", { ...give, terminalIds: ["nowhere"] })).toBe("missing-row");
  expect(code(asked(smallRoute(), "packet.give", give), "packet.give", give)).toBe("taken-id");
});

test("what was brought takes the place of what stands where a person says so, and no other waits any longer", () => {
  const taken = asked(disputed(), "rival.decide", { rivalId: rivalId(id, "packet-1", "mark"), stands: "brought" });
  expect(taken.reading.get(id)).toMatchObject({ value: 0.8, by: "North", packetId: null });
  expect(taken.rivalReading.size).toBe(0);
});

test("what stands is kept where a person says so, and nothing is kept where none stands", () => {
  const keep = { rivalId: rivalId(id, "packet-1", "mark"), stands: "present" };
  const kept = asked(disputed(), "rival.decide", keep);
  expect(kept.reading.get(id)).toMatchObject({ value: 0.9, by: "Office" });
  expect(kept.rivalReading.size).toBe(0);
  expect(code(asked(disputed(), "reading.remove", { readingId: id }), "rival.decide", keep)).toBe("missing-row");
});

test("another reading takes with it the crews' that said the same, and leaves those that said otherwise", () => {
  const again = asked(disputed(), "reading.take", { ...offset, value: 0.8, text: "", ...signed });
  const corrected = asked(again, "reading.take", { ...offset, value: 1, text: "", ...signed });
  expect([...corrected.rivalReading.values()].map((one) => one.by)).toEqual(["East"]);
});

test("a reading that waits no longer cannot be decided again", () => {
  expect(code(smallRoute(), "rival.decide", { rivalId: "gone", stands: "brought" })).toBe("missing-row");
});

/** An offset of 0.9 m stands; two crews brought 0.8 m and one 0.7 m. */
function disputed(): Route {
  const read = asked(smallRoute(), "reading.take", { ...offset, value: 0.9, text: "", ...signed });
  return ["North", "South", "East"].reduce((route, crew, index) => {
    const packetId = `packet-${index + 1}`;
    const given = asked(route, "packet.give", { ...give, packetId, crew });
    const rival = { ...offset, kind: "terminal", what: "offset", text: "", by: crew, atIso: "2030", packetId } as const;
    const value = crew === "East" ? 0.7 : 0.8;
    return withRows(given, "rivalReading", [
      ...given.rivalReading.values(),
      { id: rivalId(id, packetId, "mark"), readingId: id, value, ...rival, madeOn: "" },
    ]);
  }, read);
}

function code(route: Route, command: string, input: unknown): string {
  const done = findCommand(command)?.ask(route, input);
  return !done ? "no command" : done.ok ? "granted" : done.fault.code;
}

function asked(route: Route, command: string, input: unknown): Route {
  const done = findCommand(command)?.ask(route, input);
  if (!done?.ok) throw new Error(done?.fault.what ?? "no such command");
  const next = applyChange(route, done.value);
  if (!next.ok) throw new Error(next.fault.what);
  return next.value;
}
