import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { traceChecksum } from "../../core/traces/checksum.ts";
import { readTrace } from "../../core/traces/readTrace.ts";
import { distanceM, type Trace } from "../../core/traces/trace.ts";

const folder = new URL("../fixtures/traces/", import.meta.url);

type Expected = {
  version: string;
  wavelengthNm: number;
  groupIndex: number;
  pulseWidthNs: number;
  rangeKm: number;
  resolutionM: number;
  averages: number;
  unixTime: number;
  dataPoints: number;
  totalLossDb: number;
  orlDb: number;
  checksumStored: number;
  checksumOverFile: number;
  events: { distanceKm: number; spliceLossDb: number; reflectanceDb: number; slopeDbPerKm: number; code: string }[];
  blocks: { name: string }[];
};

function fileOf(name: string): { trace: Trace; expected: Expected } {
  const read = readTrace(readFileSync(new URL(`${name}.sor`, folder)));
  if (!read.ok) throw new Error(read.fault.what);
  return { trace: read.value, expected: JSON.parse(readFileSync(new URL(`${name}.expected.json`, folder), "utf8")) };
}

// Against another reader's figures for three files of instruments in the field: origin beside them.
describe.each(["trace-1", "trace-2", "trace-3"])("%s, as an independent reader gave it", (name) => {
  const { trace, expected } = fileOf(name);

  test("how it was taken", () => {
    expect(trace.damages).toEqual([]);
    expect(trace.version).toBe(expected.version);
    expect(trace.fixed?.wavelengthNm).toBeCloseTo(expected.wavelengthNm, 6);
    expect(trace.fixed?.groupIndex).toBeCloseTo(expected.groupIndex, 6);
    expect(trace.fixed?.pulseWidthNs).toBe(expected.pulseWidthNs);
    expect(trace.fixed?.averageCount).toBe(expected.averages);
    expect(trace.fixed?.takenUnixS).toBe(expected.unixTime);
  });

  test("its curve", () => {
    expect(trace.points?.levelsDb.length).toBe(expected.dataPoints);
    expect(trace.points?.spacingM).toBeCloseTo(expected.resolutionM, 9);
    const rangeM = (trace.points?.spacingM ?? 0) * expected.dataPoints;
    expect(rangeM / 1000).toBeCloseTo(expected.rangeKm, 6);
  });

  test("its events", () => {
    expect(trace.events.map((one) => one.code)).toEqual(expected.events.map((one) => one.code));
    trace.events.forEach((one, index) => {
      const other = expected.events[index];
      expect(one.distanceM / 1000).toBeCloseTo(other?.distanceKm ?? Number.NaN, 3);
      expect(one.spliceLossDb).toBeCloseTo(other?.spliceLossDb ?? Number.NaN, 9);
      expect(one.slopeDbPerKm).toBeCloseTo(other?.slopeDbPerKm ?? Number.NaN, 9);
      expect(one.reflectanceDb ?? -2147483.648).toBeCloseTo(other?.reflectanceDb ?? Number.NaN, 6);
    });
  });

  test("its sums and its blocks", () => {
    expect(trace.link?.totalLossDb).toBeCloseTo(expected.totalLossDb, 9);
    expect(trace.link?.returnLossDb).toBeCloseTo(expected.orlDb, 9);
    expect(trace.checksum).toEqual({
      stored: expected.checksumStored,
      computed: expected.checksumOverFile,
      fits: expected.checksumStored === expected.checksumOverFile,
    });
    const standard = ["GenParams", "SupParams", "FxdParams", "KeyEvents", "LnkParams", "DataPts", "Cksum"];
    const others = expected.blocks.map((one) => one.name).filter((one) => !standard.includes(one));
    expect(trace.otherBlocks).toEqual(others);
  });
});

test("the checksum of the usual check string", () => {
  const of = (text: string) => traceChecksum(new TextEncoder().encode(text));
  expect(of("123456789")).toBe(0x29b1); // published check value of this CRC
  expect(of("")).toBe(0xffff);
  expect(of("Cksum\0")).toBe(0xc8e4); // computed by another program
});

test("distance by time and group index: c t / n with c = 299 792 458 m/s exactly (SI)", () => {
  expect(distanceM(10e-6, 1.468)).toBeCloseTo(2042.183, 3);
  expect(distanceM(24.69e-6, 1.468)).toBeCloseTo(5042.15, 2);
  expect(distanceM(12.3456e-6, 1.4677)).toBeCloseTo(2521.713, 3);
});
