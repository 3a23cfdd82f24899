import { expect, test } from "vitest";
import { applyChange, invert } from "../../../core/edits/change.ts";
import { planTemplate, writeTemplate } from "../../../core/exchange/template.ts";
import { settingsOf } from "../../../core/model/route.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";

test("a template brings standards and catalogues into another route, not its name or its units", () => {
  const ours = changed(smallRoute(), "settings", "settings", {
    standoffM: 1.2192,
    routeName: "Ours",
    unitSystem: "metric",
  });
  const theirs = changed(smallRoute(), "settings", "settings", { routeName: "Theirs" });
  const planned = planTemplate(theirs, writeTemplate(ours));
  if (!planned.ok) throw new Error(planned.fault.what);
  expect(planned.value).toMatchObject({ newCount: 0, changedCount: 1 });
  const done = applyChange(theirs, planned.value);
  if (!done.ok) throw new Error(done.fault.what);
  expect(settingsOf(done.value)).toMatchObject({ standoffM: 1.2192, routeName: "Theirs", unitSystem: "us" });
  const undone = applyChange(done.value, invert({ ...planned.value, label: "", author: "", atIso: "" }));
  expect(undone.ok && settingsOf(undone.value)).toEqual(settingsOf(theirs));
});

test("a template of the same route changes nothing", () => {
  expect(planTemplate(smallRoute(), writeTemplate(smallRoute()))).toMatchObject({ ok: true, value: { rows: [] } });
});

test("a template written before strand could slip, limits told their voltage and edges, and sets stood on others is read as it was meant then", () => {
  const older = writeTemplate(smallRoute())
    .replace(/,\s*"strandAtPoles": "clamped"/, "")
    .replace(/,\s*"(coversV|moreMPerV|edgeLimitM|edgeRunM)": [\d.]+/g, "")
    .replace(/,\s*"baseSetId": null/g, "");
  expect(older).not.toMatch(/strandAtPoles|coversV|moreMPerV|edge|baseSetId/);
  expect(planTemplate(smallRoute(), older)).toMatchObject({ ok: true, value: { rows: [] } });
});

test("a template written before extreme weather, load factors and pulling tension asks for none of them", () => {
  const { standards, catalogues, ...rest } = JSON.parse(writeTemplate(smallRoute()));
  const { extremeWindId: _wind, extremeIceId: _ice, workerLoadN: _worker, ...olderStandards } = standards;
  const { extremeWind: _winds, extremeIce: _ices, windFactor: _factors, loadFactor: _loads, ...olderRows } = catalogues;
  const cableType = olderRows.cableType.map(({ pullN: _pull, ...row }: Record<string, unknown>) => row);
  const older = { ...rest, standards: olderStandards, catalogues: { ...olderRows, cableType } };
  expect(planTemplate(smallRoute(), JSON.stringify(older))).toMatchObject({ ok: true, value: { rows: [] } });
});

test("a template brings extreme weather and load factors along, and the choice of them", () => {
  const planned = planTemplate(smallRoute(), writeTemplate(extremeRoute()));
  if (!planned.ok) throw new Error(planned.fault.what);
  const tables = new Set(planned.value.rows.map(({ table }) => table));
  expect([...tables].sort()).toEqual(["extremeIce", "extremeWind", "settings", "strengthLimit", "windFactor"]);
});

test("a file that is no template, or holds a bad figure, is refused and named", () => {
  expect(planTemplate(smallRoute(), "pole,height")).toMatchObject({ ok: false, fault: { code: "not-a-template" } });
  expect(planTemplate(smallRoute(), "{}")).toMatchObject({ ok: false, fault: { code: "not-a-template" } });
  const text = writeTemplate(smallRoute()).replace(/"standoffM": [\d.]+/, '"standoffM": -1');
  expect(planTemplate(smallRoute(), text)).toMatchObject({
    ok: false,
    fault: { code: "bad-template", where: "standards, standoffM" },
  });
});

test("a template that names a row nobody has is refused", () => {
  const text = writeTemplate(smallRoute()).replace(/"dropTypeId": "[^"]+"/, '"dropTypeId": "drop-none"');
  expect(planTemplate(smallRoute(), text)).toMatchObject({ ok: false, fault: { code: "missing-row" } });
});
