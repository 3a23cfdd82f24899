import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isFar } from "../../../core/closeout/packet/farReading.ts";
import { pictureKind } from "../../../core/closeout/packet/pictureKind.ts";
import { parseReading, plainUnit, readingText, saysSame } from "../../../core/closeout/packet/readingText.ts";
import { unsoundWords } from "../../../core/closeout/packet/unsoundWords.ts";
import type { ReadingKind } from "../../../core/model/closeoutRows.ts";

const value = (what: ReadingKind, typed: string, system: "us" | "metric" = "us") => {
  const parsed = parseReading(what, typed, system);
  return parsed.ok ? (parsed.value ?? parsed.text) : "not readable";
};

describe("what a crew types", () => {
  test("an offset without a unit is in inches, as the tape at the pole is; a coil and a height in feet", () => {
    expect([value("offset", "36"), value("slack", "20"), value("height", "18 ft 6 in")]).toEqual([
      0.9144, 6.096, 5.6388,
    ]);
    expect(["offset", "slack"].map((one) => plainUnit(one === "offset" ? "offset" : "slack", "us"))).toEqual([
      "in",
      "ft",
    ]);
  });
  test("any unit the trade writes is taken", () => {
    expect(["36 in", "3'", "0.9144 m", "914.4 mm"].map((one) => value("offset", one))).toEqual(Array(4).fill(0.9144));
    expect(value("offset", "0.9", "metric")).toBe(0.9);
  });
  test("a mark is the figure on the sheath alone, a port its number, light in dBm, a bond conducts or not", () => {
    expect([
      value("markBefore", "12345"),
      value("portOfDrop", "4"),
      value("power", "-18.4 dBm"),
      value("power", "−18"),
    ]).toEqual([12345, 4, -18.4, -18]);
    expect([value("continuity", "Yes"), value("continuity", "no"), value("resistance", "12.5 ohm")]).toEqual([
      1, 0, 12.5,
    ]);
    expect(value("houseTag", " T-1-4 ")).toBe("T-1-4");
  });
  test("what cannot be read is said, never guessed", () => {
    expect([
      value("markBefore", "12 345"),
      value("portOfDrop", "0"),
      value("power", "eighteen"),
      value("offset", "3 6 ft"),
    ]).toEqual(Array(4).fill("not readable"));
  });
});

test("what is printed of a reading is read back within what a tape shows", () => {
  const kinds = fc.constantFrom<ReadingKind>("offset", "slack", "height");
  fc.assert(
    fc.property(
      kinds,
      fc.constantFrom("us", "metric"),
      fc.double({ min: 0, max: 40, noNaN: true }),
      (what, system, read) => {
        const printed = readingText(what, { value: read, text: "" }, system);
        expect(Math.abs(Number(value(what, printed, system)) - read)).toBeLessThan(0.0026);
      },
    ),
  );
});

test("twelve inches are a foot more, also when they come by rounding", () => {
  expect(readingText("height", { value: 5.4863, text: "" }, "us")).toBe("18 ft 0 in");
});

test("two readings say the same whoever read them", () => {
  expect(saysSame({ value: 1, text: "" }, { value: 1, text: "" })).toBe(true);
  expect(saysSame({ value: null, text: "T-1 " }, { value: null, text: "T-1" })).toBe(true);
  expect(saysSame(null, { value: 1, text: "" })).toBe(false);
});

test("a reading is far from what is drawn beyond the tolerance on either side, and nowhere where nothing is drawn", () => {
  const drawn = { leastValue: -20, mostValue: -16 };
  expect([-21.5, -21.6, -14.5, -14.4].map((one) => isFar(one, drawn, 1.5))).toEqual([false, true, false, true]);
  expect([isFar(5, null, 1), isFar(5, drawn, null), isFar(null, drawn, 1)]).toEqual([false, false, false]);
});

test("a reading that cannot be of its kind is told", () => {
  expect(unsoundWords("power", 0, { value: -18, text: "" })).not.toBeNull();
  expect(unsoundWords("continuity", 0, { value: 2, text: "" })).not.toBeNull();
  expect(unsoundWords("offset", 0, { value: null, text: "36" })).not.toBeNull();
  expect(unsoundWords("note", 0, { value: null, text: " " })).not.toBeNull();
  expect(unsoundWords("power", 1490, { value: -18, text: "" })).toBeNull();
});

test("a picture is known by its first bytes, not by what it says it is", () => {
  expect(pictureKind(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0))).toBe("jpeg");
  expect(pictureKind(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a))).toBe("png");
  expect(pictureKind(new TextEncoder().encode("<svg onload=alert(1)>"))).toBeNull();
});
