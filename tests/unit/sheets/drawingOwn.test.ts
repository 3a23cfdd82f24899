import { describe, expect, it } from "vitest";
import { planTemplate, writeTemplate } from "../../../core/exchange/template.ts";
import { settingsOf } from "../../../core/model/route.ts";
import type { Settings } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { Sheet } from "../../../core/sheets/paper/displayList.ts";
import { overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { paperOf } from "../../../core/sheets/paper/paper.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const setOf = (settings: Partial<Settings>) => composeSet(openPlant(smallRoute({ settings })), []).sheets;
const textsOf = (sheet: Sheet | undefined) =>
  sheet?.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])) ?? [];

describe("a company's own for its drawings", () => {
  it("prints its general notes, numbered, on a sheet behind the cover, and no such sheet without them", () => {
    const sheets = setOf({ generalNotes: "Bond at every pole.\n\nCall before you dig." });
    const notes = sheets.find((one) => one.kind === "notes");
    expect(notes?.number).toBe("2");
    expect(textsOf(notes)).toEqual(expect.arrayContaining(["1", "Bond at every pole.", "2", "Call before you dig."]));
    expect(setOf({}).some((one) => one.kind === "notes")).toBe(false);
  });

  it("prints its line in the title block of every sheet, over no other words", () => {
    for (const paper of ["usual", "ANSI A", "A4"] as const) {
      const sheets = setOf({ titleLine: "Permit 2030-114, drawing D-7", paper });
      expect(sheets.every((one) => textsOf(one).some((text) => text.endsWith("Permit 2030-114, drawing D-7")))).toBe(
        true,
      );
      expect(sheets.flatMap(overlaps)).toEqual([]);
    }
  });

  it("does without the sheets it leaves out, the others numbered through", () => {
    const sheets = setOf({ sheetsLeftOut: "permit,guy" });
    expect(sheets.some((one) => ["permit", "guy"].includes(one.kind))).toBe(false);
    expect(sheets.map((one) => one.number)).toEqual(sheets.map((_, index) => String(index + 1)));
  });

  it("is drawn on its paper", () => {
    expect(setOf({ paper: "A2" })[0]?.sizeMm).toEqual(paperOf("A2").sizeMm);
    expect(setOf({ paper: "usual" })[0]?.sizeMm).toEqual(paperOf("ANSI B").sizeMm);
  });

  it("goes with a template into another route", () => {
    const own = { generalNotes: "Bond at every pole.", titleLine: "D-7", sheetsLeftOut: "guy", paper: "A1" } as const;
    const planned = planTemplate(smallRoute(), writeTemplate(smallRoute({ settings: own })));
    if (!planned.ok) throw new Error(planned.fault.what);
    const taken = planned.value.rows.find((row) => row.table === "settings")?.after;
    expect(taken).toEqual({ ...settingsOf(smallRoute()), ...own });
  });
});
