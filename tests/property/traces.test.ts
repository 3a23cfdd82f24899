import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTrace } from "../../core/traces/readTrace.ts";
import { distanceM, type Trace } from "../../core/traces/trace.ts";
import { type Written, writeTrace } from "../fixtures/traces/writeTrace.ts";

const words = fc.string({ unit: fc.constantFrom(..."abcXYZ 019-_/."), maxLength: 20 }).map((text) => text.trim());
const thousandths = (min: number, max: number) => fc.integer({ min, max }).map((figure) => figure / 1000);

const written: fc.Arbitrary<Written> = fc.record({
  isIssue2: fc.boolean(),
  cableId: words,
  fiberId: words,
  wavelengthNm: fc.constantFrom(1310, 1490, 1550, 1625),
  groupIndex: fc.integer({ min: 145_000, max: 150_000 }),
  spacing: fc.integer({ min: 1, max: 10_000_000 }),
  events: fc.array(
    fc.record({
      time: fc.integer({ min: 0, max: 2 ** 31 }),
      slopeDbPerKm: thousandths(-2000, 2000),
      spliceLossDb: thousandths(-32_000, 32_000),
      reflectanceDb: fc.option(thousandths(-90_000, 0)),
      code: fc.constantFrom("0F9999LS", "1E9999LS", "2A99992P"),
      comment: words,
    }),
    { maxLength: 12 },
  ),
  totalLossDb: thousandths(-5000, 60_000),
  returnLossDb: thousandths(0, 65_000),
  levels: fc.array(fc.integer({ min: 0, max: 65_535 }), { maxLength: 200 }),
});

function readBack(bytes: Uint8Array): Trace {
  const read = readTrace(bytes);
  if (!read.ok) throw new Error(read.fault.what);
  return read.value;
}

describe("a reflectometer's file", () => {
  test("written by the layout, in both issues, is read back as it was written", () => {
    fc.assert(
      fc.property(written, (file) => {
        const trace = readBack(writeTrace(file));
        expect(trace.damages).toEqual([]);
        expect(trace.checksum.fits).toBe(true);
        expect([trace.general?.cableId, trace.general?.fiberId]).toEqual([file.cableId, file.fiberId]);
        expect(trace.fixed?.wavelengthNm).toBe(file.wavelengthNm);
        const groupIndex = file.groupIndex / 100_000;
        expect(trace.fixed?.groupIndex).toBe(groupIndex);
        expect(trace.events).toEqual(
          file.events.map(({ time, ...event }, index) => ({
            ...event,
            slopeDbPerKm: Math.round(event.slopeDbPerKm * 1000) / 1000,
            spliceLossDb: Math.round(event.spliceLossDb * 1000) / 1000,
            number: index + 1,
            timeS: time * 1e-10,
            distanceM: distanceM(time * 1e-10, groupIndex),
          })),
        );
        expect(trace.link).toEqual({ totalLossDb: file.totalLossDb, returnLossDb: file.returnLossDb });
        expect([...(trace.points?.levelsDb ?? [])]).toEqual(file.levels.map((level) => (level * 1000) / -1e6));
      }),
      { numRuns: 200, seed: 31 },
    );
  });

  test("cut off anywhere keeps what stands before the cut, and says what is missing", () => {
    fc.assert(
      fc.property(written, fc.double({ min: 0, max: 0.999, noNaN: true }), (file, share) => {
        const bytes = writeTrace(file);
        const whole = readBack(bytes);
        const read = readTrace(bytes.subarray(0, Math.floor(share * bytes.length)));
        if (!read.ok) {
          expect(read.fault.code).toBe("not-a-trace");
          return;
        }
        expect(read.value.damages).not.toEqual([]);
        if (read.value.fixed) expect(read.value.events).toEqual(whole.events.slice(0, read.value.events.length));
        const levels = read.value.points?.levelsDb ?? [];
        expect([...levels]).toEqual([...(whole.points?.levelsDb.slice(0, levels.length) ?? [])]);
      }),
      { numRuns: 300, seed: 32 },
    );
  });

  test("with any bytes changed is read or refused in plain words, and never holds more than the file did", () => {
    const real = readFileSync(new URL("../fixtures/traces/trace-3.sor", import.meta.url));
    const change = fc.record({ at: fc.nat(), byte: fc.integer({ min: 0, max: 255 }) });
    fc.assert(
      fc.property(written, fc.boolean(), fc.array(change, { minLength: 1, maxLength: 30 }), (file, isReal, changes) => {
        const bytes = Uint8Array.from(isReal ? real : writeTrace(file));
        for (const { at, byte } of changes) bytes[at % Math.min(bytes.length, 600)] = byte;
        const read = readTrace(bytes);
        if (!read.ok) return;
        expect(read.value.events.length).toBeLessThanOrEqual(bytes.length / 23);
        expect(read.value.points?.levelsDb.length ?? 0).toBeLessThanOrEqual(bytes.length / 2);
      }),
      { numRuns: 2000, seed: 33 },
    );
  });
});
