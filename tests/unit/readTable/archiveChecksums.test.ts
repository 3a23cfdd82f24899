import { strToU8, zipSync } from "fflate";
import { expect, test } from "vitest";
import { archiveChecksums, crc32 } from "../../../electron/host/readTable/archiveChecksums.ts";

test("the checksum of the usual nine digits is the one every description of it gives, in one piece or two", () => {
  expect(crc32(strToU8("123456789"))).toBe(0xcbf43926);
  expect(crc32(strToU8("6789"), crc32(strToU8("12345")))).toBe(0xcbf43926);
});

test("an archive tells the checksum of each part under its name, a comment behind it or not", () => {
  const bytes = zipSync({ "doc.kml": strToU8("123456789"), "poteaux/été.kml": strToU8("x") });
  const told = new Map([
    ["doc.kml", 0xcbf43926],
    ["poteaux/été.kml", crc32(strToU8("x"))],
  ]);
  expect(archiveChecksums(bytes)).toEqual(told);
  expect(archiveChecksums(Uint8Array.from([...bytes, ...strToU8("made by hand")]))).toEqual(told);
});

test("bytes that are no archive, or are cut off, tell none", () => {
  expect(archiveChecksums(new Uint8Array()).size).toBe(0);
  expect(archiveChecksums(zipSync({ "doc.kml": strToU8("x") }).slice(0, 60)).size).toBe(0);
});
