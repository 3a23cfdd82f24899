import { expect, test } from "vitest";
import { readTrace } from "../../../core/traces/readTrace.ts";
import { type Written, writeTrace } from "../../fixtures/traces/writeTrace.ts";

const file: Written = {
  isIssue2: true,
  cableId: "C1",
  fiberId: "13",
  wavelengthNm: 1550,
  groupIndex: 146_800,
  spacing: 100_000,
  events: [
    { time: 100_000, slopeDbPerKm: 0.2, spliceLossDb: 0.08, reflectanceDb: null, code: "0F9999LS", comment: "" },
  ],
  totalLossDb: 0.5,
  returnLossDb: 34,
  levels: [1000, 2000],
};

function readBack(bytes: Uint8Array) {
  const read = readTrace(bytes);
  if (!read.ok) throw new Error(read.fault.what);
  return read.value;
}

test("a photo is no reflectometer file, and the refusal says which file is wanted", () => {
  const read = readTrace(Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]));
  expect(read).toMatchObject({ ok: false, fault: { code: "not-a-trace", mend: expect.stringContaining(".sor") } });
});

test("a checksum that does not fit is told and nothing else is lost", () => {
  const bytes = writeTrace(file);
  bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
  const trace = readBack(bytes);
  expect(trace.checksum.fits).toBe(false);
  expect(trace.damages).toEqual([]);
  expect(trace.events.length).toBe(1);
});

test("a damaged block costs that block alone", () => {
  const bytes = writeTrace(file);
  const at = new TextDecoder("latin1").decode(bytes).lastIndexOf("GenParams");
  bytes[at] = 0x58;
  const trace = readBack(bytes);
  expect(trace.general).toBeNull();
  expect(trace.damages).toEqual([
    { block: "GenParams", what: expect.stringContaining("does not begin with its name") },
  ]);
  expect(trace.fixed?.groupIndex).toBe(1.468);
  expect(trace.events.length).toBe(1);
});

test("a file cut in the curve keeps its events and says how many points are missing", () => {
  const whole = writeTrace({ ...file, levels: Array.from({ length: 100 }, (_, index) => index) });
  const trace = readBack(whole.subarray(0, whole.length - 8 - 100));
  expect(trace.events.length).toBe(1);
  expect(trace.points?.levelsDb.length).toBe(50);
  expect(trace.damages.map((one) => one.what).join("; ")).toContain("50 points of the curve are missing");
});

test("without the index of its fiber, distances are by the usual one, and that is told", () => {
  const trace = readBack(writeTrace({ ...file, groupIndex: 0 }));
  expect(trace.events[0]?.distanceM).toBeCloseTo(2042.183, 2);
  expect(trace.damages[0]?.what).toContain("1.468");
});
