import { describe, expect, test } from "vitest";
import { decodeText } from "../../../electron/host/readTable/decodeText.ts";

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);

describe("encodings", () => {
  test.each([
    ["UTF-8", bytes(0xc3, 0xa9), "é", "utf-8"],
    ["UTF-8 with a byte order mark", bytes(0xef, 0xbb, 0xbf, 0xc3, 0xa9), "é", "utf-8"],
    ["UTF-16 little end first", bytes(0xff, 0xfe, 0xe9, 0), "é", "utf-16le"],
    ["UTF-16 big end first", bytes(0xfe, 0xff, 0, 0xe9), "é", "utf-16be"],
  ])("%s is told from the bytes", (_, given, text, encoding) => {
    expect(decodeText("a.csv", given)).toEqual({ ok: true, value: { text, encoding, note: "" } });
  });

  test("bytes that are no UTF-8 are read as windows-1252, and that is said", () => {
    expect(decodeText("a.csv", bytes(0x43, 0xe9))).toMatchObject({
      ok: true,
      value: { text: "Cé", encoding: "windows-1252", note: expect.stringContaining("windows-1252") },
    });
  });

  test("a named encoding is held to", () => {
    expect(decodeText("a.csv", bytes(0x88, 0xdc), "shift_jis")).toMatchObject({ ok: true, value: { text: "緯" } });
    expect(decodeText("a.csv", bytes(0xe9), "utf-8")).toMatchObject({ ok: false, fault: { code: "bad-encoding" } });
  });

  test("a file of zero bytes is no text", () => {
    expect(decodeText("a.bin", bytes(0, 1, 2, 0))).toMatchObject({ ok: false, fault: { code: "not-text" } });
  });
});
