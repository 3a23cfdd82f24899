import fc from "fast-check";
import { expect, test } from "vitest";
import { dxfName, dxfText } from "../../../core/dxf/dxfText.ts";

test("diameter, degree and plus-minus go by the codes of the format", () => {
  expect(dxfText("Ø 10 at 5° ± 1")).toBe("%%c 10 at 5%%d %%p 1");
});

test("what ASCII can spell is spelled, every other letter goes by its code, and nothing is lost on the way", () => {
  expect(dxfText("≥ 15 ft – “Café” ½")).toBe('>= 15 ft - "Caf\\U+00E9" 1/2');
  expect(dxfText("𝄞")).toBe("?");
});

test("signs that mean something to the format show as themselves", () => {
  expect(dxfText("100%%d, 5 %, A^B, C:\\U+0041")).toBe("100%%%%%%d, 5 %, A^ B, C:\\U+005CU+0041");
});

test("whatever was typed comes out as one line of printable ASCII", () => {
  fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => /^[ -~]*$/.test(dxfText(text))));
});

test("a name is of capitals, digits and three signs, 31 at most", () => {
  expect(dxfName("Terminal 8 (ports)")).toBe("TERMINAL-8-PORTS-");
  expect(dxfName("a".repeat(40))).toHaveLength(31);
});
