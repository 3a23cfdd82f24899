import { expect, test } from "vitest";
import { cellText, columnForm, readCell } from "../../../renderer/settings/columnForm.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const route = smallRoute();

test("a power that is not known yet is a figure all the same, and may be made unknown again", () => {
  const form = columnForm(route, "opticalClass", "hubLaunchLeastDbm", null);
  expect(form).toEqual({ kind: "figure" });
  const read = (text: string) => readCell("opticalClass", "hubLaunchLeastDbm", form, text, "us");
  expect(read("-27 dBm")).toEqual({ ok: true, value: -27 });
  expect(read("1.5")).toEqual({ ok: true, value: 1.5 });
  expect(read(" ")).toEqual({ ok: true, value: null });
  expect(cellText("hubLaunchLeastDbm", -27, "us")).toBe("-27 dBm");
  expect(cellText("hubLaunchLeastDbm", null, "us")).toBe("");
});

test("a figure that must be there cannot be made empty, and words stay words", () => {
  const form = columnForm(route, "opticalClass", "maxLossDb", 28);
  expect(readCell("opticalClass", "maxLossDb", form, "", "us").ok).toBe(false);
  expect(columnForm(route, "opticalClass", "name", "B+")).toEqual({ kind: "words" });
});
