import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { digestOf, plainText } from "../../../core/closeout/digest.ts";
import { gatesBefore, type Stage } from "../../../core/closeout/gates.ts";
import { frozenFault, signatureFault } from "../../../core/closeout/signatures.ts";
import { applyChange, invert } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { tableNames } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { openChecker } from "../../../core/rules/checker.ts";
import { smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { closedOut, signedFor } from "../../fixtures/route/closedOut.ts";
import { punchOf } from "../../fixtures/route/readingRow.ts";
import { spareTrace } from "../../fixtures/route/tracedRoute.ts";

const done = closedOut(smallRoute());
const signing = { signOffId: "sign-9", stage: "built", by: "Ann", role: "", note: "", atIso: "2030-06-01T08:00:00Z" };

test("a route nobody built has every gate of building and testing shut, and tells how much is missing", () => {
  const shut = shutGates(smallRoute(), "accepted");
  expect(shut).toMatchObject({ built: expect.any(Number), readings: expect.any(Number), tested: expect.any(Number) });
  expect(Object.keys(shut)).not.toContain("punch");
  expect(code(smallRoute(), "signOff.sign", signing)).toBe("gates-shut");
});

test("a route without anything on it is not signed for", () => {
  const bare = { ...smallRoute(), strandSection: new Map(), span: new Map(), terminal: new Map(), cable: new Map() };
  expect(gatesBefore(openPlant({ ...bare, drop: new Map() }), "built", [])[1]?.missing).toEqual([{ kind: "nothing" }]);
});

test("a route built, read and tested, with its errors waived, is signed for in any stage", () => {
  expect(shutGates(done, "accepted")).toEqual({});
  for (const stage of ["built", "tested", "accepted"])
    expect(code(done, "signOff.sign", { ...signing, stage })).toBe("granted");
});

test("an error without a waiver, a reading taken away, a trace of no fiber, an open punch and rival readings each shut their gate", () => {
  const [waiver] = done.waiver.keys();
  if (waiver !== undefined) expect(shutGates(without(done, "waiver", waiver), "built")).toEqual({ errors: 1 });
  const offset = [...done.reading.values()].find(({ what }) => what === "offset");
  const power = [...done.reading.values()].find(({ what }) => what === "power");
  if (!offset || !power) throw new Error("the route closed out lacks readings");
  expect(shutGates(without(done, "reading", offset.id), "built")).toEqual({ readings: 1 });
  expect(shutGates(without(done, "reading", power.id), "built")).toEqual({});
  expect(shutGates(without(done, "reading", power.id), "tested")).toEqual({ light: 1 });
  const stray = { ...spareTrace, cableId: null, fiber: null };
  expect(shutGates(withRows(done, "trace", [stray]), "tested")).toEqual({ traces: 1 });
  const punched = withRows(done, "punch", [punchOf("punch-1", 1)]);
  expect(shutGates(punched, "tested")).toEqual({});
  expect(shutGates(punched, "accepted")).toEqual({ punch: 1 });
  const by = { by: "Crew 2", atIso: "2030-05-01T08:00:00Z" };
  const packet = { id: "packet-1", number: 1, crew: "Crew 2", terminalIds: "", wavelengthsNm: "", ...by };
  const rival = { ...offset, id: `${offset.id} rival`, readingId: offset.id, packetId: "packet-1", value: 2 };
  expect(shutGates(withRows(done, "packet", [packet], "rivalReading", [rival]), "accepted")).toEqual({ rivals: 1 });
});

test("one person signs once for a stage in one role", () => {
  const once = signedFor(done, "built");
  expect(code(once, "signOff.sign", { ...signing, by: "M. Okafor", role: "Engineer" })).toBe("signed-already");
  expect(code(once, "signOff.sign", { ...signing, by: "M. Okafor", role: "Owner" })).toBe("granted");
});

test("a signature holds one SHA-256 over every row, a line each, tables, ids and columns in order", () => {
  const lines = [...tableNames]
    .sort()
    .flatMap((table) =>
      [...done[table].values()]
        .sort((a, b) => (a.id < b.id ? -1 : 1))
        .map((row) => `${table} ${plainText({ ...row })}\n`),
    );
  const expected = createHash("sha256").update(lines.join("")).digest("hex");
  expect(digestOf(done)).toBe(expected);
  expect(signedFor(done, "built").signOff.get("sign-off-built")?.digest).toBe(expected);
});

test("a route accepted is frozen: nothing but its opening again is taken", () => {
  const frozen = signedFor(done, "accepted");
  const raise = rowsOf(frozen, "row.set", { table: "pole", id: "pole-1", values: { note: "leans" } });
  expect(frozenFault(signedFor(done, "tested"))).toBeNull();
  expect(signatureFault(frozen, raise)).toMatchObject({ code: "frozen" });
  expect(signatureFault(frozen, rowsOf(frozen, "signOff.sign", signing))).toMatchObject({ code: "frozen" });
  const reopening = rowsOf(frozen, "signOff.reopen", reopen);
  expect(signatureFault(frozen, reopening)).toBeNull();
  const opened = granted(applyChange(frozen, { rows: reopening }));
  expect(frozenFault(opened)).toBeNull();
  expect(signatureFault(opened, raise)).toBeNull();
  expect([...opened.revision.values()].map(({ letter, reason }) => [letter, reason])).toEqual([["B", reopen.reason]]);
  expect(code(opened, "signOff.reopen", { ...reopen, letter: "C", revisionId: "revision-C" })).toBe("not-signed");
});

test("a signature is neither taken back nor removed nor changed, and its opening again is not taken back", () => {
  const once = signedFor(done, "built");
  const edit = { label: "", author: "", atIso: "" };
  const taken = invert({ ...edit, rows: rowsOf(done, "signOff.sign", signing) }).rows;
  expect(
    signatureFault(granted(applyChange(done, { rows: invert({ ...edit, rows: taken }).rows })), taken),
  ).toMatchObject({
    code: "signed",
  });
  const removal = rowsOf(once, "row.remove", { table: "signOff", id: "sign-off-built" });
  expect(signatureFault(once, removal)).toMatchObject({ code: "signed" });
  const before = once.signOff.get("sign-off-built") ?? null;
  const other = [
    { table: "signOff", id: "sign-off-built", before, after: before && { ...before, by: "Bob" } } as const,
  ];
  expect(signatureFault(once, other)).toMatchObject({ code: "signed" });
  const reopening = rowsOf(once, "signOff.reopen", reopen);
  const opened = granted(applyChange(once, { rows: reopening }));
  expect(signatureFault(opened, invert({ ...edit, rows: reopening }).rows)).toMatchObject({ code: "signed" });
});

const reopen = {
  revisionId: "revision-B",
  letter: "B",
  by: "Ann",
  reason: "A pole was moved",
  atIso: "2030-07-01T08:00:00Z",
};

function shutGates(route: Route, stage: Stage): Record<string, number> {
  const plant = openPlant(route);
  const gates = gatesBefore(plant, stage, openChecker(plant).findings());
  return Object.fromEntries(
    gates.filter(({ missing }) => missing.length > 0).map(({ id, missing }) => [id, missing.length]),
  );
}

function rowsOf(route: Route, commandId: string, input: object) {
  const asked = findCommand(commandId)?.ask(route, input);
  if (!asked) throw new Error(`no such edit: ${commandId}`);
  return granted(asked).rows;
}

function granted<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: { readonly what: string } },
): T {
  if (!result.ok) throw new Error(result.fault.what);
  return result.value;
}

function code(route: Route, commandId: string, input: object): string {
  const asked = findCommand(commandId)?.ask(route, input);
  return asked?.ok ? "granted" : (asked?.fault.code ?? "unknown");
}
