import { expect, test } from "vitest";
import { type QuantityKind, quantityKind, quantityText, readQuantity } from "../../../renderer/settings/quantity.ts";

const readValue = (text: string, kind: QuantityKind, system: "us" | "metric") => {
  const read = readQuantity(text, kind, system);
  return read.ok ? read.value : read.what;
};

test("a length is read in either system whatever is shown, to the last bit", () => {
  expect(readValue("36 in", "offset", "metric")).toBe(0.9144);
  expect(readValue("36", "offset", "us")).toBe(0.9144);
  expect(readValue("0.9144 m", "offset", "us")).toBe(0.9144);
  expect(readValue("3'", "offset", "metric")).toBe(0.9144);
  expect(readValue("300 ft", "run", "metric")).toBe(91.44);
});

test("a plain number is in the unit shown", () => {
  expect(readValue("12", "run", "us")).toBeCloseTo(3.6576, 12);
  expect(readValue("12", "run", "metric")).toBe(12);
  expect(readValue("60", "part", "us")).toBe(0.6);
});

test("forces, weights and temperatures are read in both systems", () => {
  expect(readValue("2400 lbf", "force", "metric")).toBeCloseTo(10675.7318766252, 6);
  expect(readValue("10000 N", "force", "us")).toBe(10_000);
  expect(readValue("60 °F", "temperature", "metric")).toBeCloseTo(15.5555555555556, 9);
  expect(readValue("57 lb/ft3", "density", "us")).toBeCloseTo(913.052412315728, 6);
});

test("what cannot be read is refused with an example", () => {
  expect(readValue("heavy", "force", "us")).toMatch(/^"heavy" cannot be read\. Write it like [\d.]+ lbf\.$/);
  expect(readValue("3 furlongs", "run", "us")).toMatch(/cannot be read as a length/);
});

test("a column's ending says what it holds", () => {
  expect(
    ["weightNPerM", "areaM2", "limitFrac", "marginDb", "hotDegC", "upNm", "sparePortCount"].map(quantityKind),
  ).toEqual(["line", "area", "part", "loss", "temperature", "wavelength", "count"]);
});

test("figures are shown with their unit and no noise", () => {
  expect(quantityText(0.9144, "offset", "us")).toBe("36 in");
  expect(quantityText(4.7244, "run", "us")).toBe("15.5 ft");
  expect(quantityText(0.6, "part", "us")).toBe("60 %");
});
