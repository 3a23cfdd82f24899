import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { spanRuns } from "../../../core/plant/spanRuns.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { paperOf } from "../../../core/sheets/paper/paper.ts";
import { planScales } from "../../../core/sheets/paper/scale.ts";
import { profileFoot } from "../../../core/sheets/profile/profileFoot.ts";
import { openProfileDesk, profileBox, rowPapers } from "../../../core/sheets/profile/profilePaper.ts";
import { profileRows } from "../../../core/sheets/profile/profileRows.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const textsOf = (route: Route) =>
  composeSet(openPlant(route), [], { kinds: ["profile"] }).sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

const rowsOf = (route: Route) => {
  const plant = openPlant(route);
  const [scale] = planScales(plant.settings().unitSystem).filter((one) => one.denominator >= 480);
  if (!scale) throw new Error("no scale");
  const cut = profileRows(plant, spanRuns(plant), rowPapers(plant, paperOf("ANSI B"), scale));
  if (!cut) throw new Error("no paper");
  return cut;
};

const endsOf = ({ steps }: ReturnType<typeof rowsOf>["rows"][number]) => [
  ...new Set(steps.flatMap((step) => [step.inPoleId, step.outPoleId])),
];

describe("the foot of a profile", () => {
  it.each([
    ["us", smallRoute()],
    ["metric", changed(smallRoute(), "settings", "settings", { unitSystem: "metric" })],
  ] as const)("keeps its scale bar on the drawing at every scale of a plan, %s", (system, route) => {
    const plant = openPlant(route);
    const fine = planScales(system).filter((one) => one.denominator <= 1200);
    expect(fine.length).toBeGreaterThan(2);
    for (const scale of fine) {
      const cut = profileRows(plant, spanRuns(plant), rowPapers(plant, paperOf("ANSI D"), scale));
      const { drawing } = paperOf("ANSI D");
      const feet = cut?.rows.map((row) => {
        const desk = openProfileDesk(plant, row, cut.paper, profileBox(cut.paper, row.steps.length));
        return profileFoot(plant, [desk], drawing);
      });
      const xs = (feet ?? [])
        .flat()
        .flatMap((mark) => (mark.kind === "line" && mark.layer === "frame" ? mark.pointsMm.map(([x]) => x) : []));
      expect(xs.length).toBeGreaterThan(0);
      expect(Math.max(...xs)).toBeLessThanOrEqual(paperOf("ANSI D").drawing.right);
    }
  });
});

describe("the profiles of a set", () => {
  it("show every span that a cable runs through once, in rows that meet at a pole", () => {
    const route = windingRoute();
    const { rows } = rowsOf(route);
    const spans = rows.flatMap((row) => row.steps.map((step) => step.span.spanId));
    expect([...spans].sort()).toEqual([...new Set([...route.cableRun.values()].map((one) => one.spanId))].sort());
    for (const row of rows) {
      expect(row.poles[0]?.poleId).toBe(row.steps[0]?.inPoleId);
      expect(row.poles.at(-1)?.poleId).toBe(row.steps.at(-1)?.outPoleId);
      const next = rows.find((one) => one.key === row.after);
      if (next) expect(next.startM).toBeCloseTo(row.endM, 6);
    }
  });

  it("show strand without a cable too, each piece by itself", () => {
    const bare = ["run-1", "run-3"].reduce((route, id) => without(route, "cableRun", id), smallRoute());
    const { rows } = rowsOf(bare);
    expect(rows.map(({ way, steps }) => [way.table, steps.map((step) => step.span.spanId)])).toEqual([
      ["cable", ["span-2"]],
      ["strandSection", ["span-1"]],
      ["strandSection", ["span-3"]],
    ]);
    for (const row of rows) expect(row.poles.map((pole) => pole.poleId)).toEqual(endsOf(row));
    expect(textsOf(bare).some((text) => /^Strand .+ from the side, without a cable: /.test(text))).toBe(true);
  });

  it("draw heights at least three times larger than lengths", () => {
    for (const unitSystem of ["us", "metric"] as const) {
      const { paper } = rowsOf(windingRoute({ unitSystem }));
      expect(paper.across.denominator / paper.up.denominator).toBeGreaterThanOrEqual(3);
    }
  });

  it("cut a line where it climbs out of the paper", () => {
    const flat = windingRoute();
    const poles = [...flat.pole.values()].map((pole): [string, typeof pole] => [
      pole.id,
      { ...pole, groundM: 100 + pole.order * 9 },
    ]);
    expect(rowsOf({ ...flat, pole: new Map(poles) }).rows.length).toBeGreaterThan(rowsOf(flat).rows.length);
  });

  it("dimension the least clearance of a span with its case and its limit, and say that nobody verified it", () => {
    const route = windingRoute();
    const limits = [...route.clearanceLimit].map(
      ([id, row]) => [id, { ...row, basisDocument: "NESC", basisMark: "memory" as const }] as const,
    );
    const texts = textsOf({ ...route, clearanceLimit: new Map(limits) });
    expect(texts.some((text) => /^\d+ ft \d+ in iced$/.test(text))).toBe(true);
    expect(texts.some((text) => /^limit \d+ ft \d+ in, unverified$/.test(text))).toBe(true);
    expect(texts).toContain("NESC; from memory, unverified");
    expect(textsOf(route).some((text) => text.includes("unverified"))).toBe(false);
  });

  it("round a limit to the nearest, so that it never reads as asking a whole step less", () => {
    const route = windingRoute({ unitSystem: "metric" });
    const limits = [...route.clearanceLimit].map(([id, row]) => [id, { ...row, limitM: 2.8956 }] as const);
    const texts = textsOf({ ...route, clearanceLimit: new Map(limits) });
    expect(texts).toContain("limit 2.90 m");
    expect(texts).not.toContain("limit 2.89 m");
  });

  it("say by how much a line is too low", () => {
    const low = changed(smallRoute(), "settings", "settings", { strandHeightM: 3 });
    const withoutHeights = { ...low, attachment: new Map() };
    expect(textsOf(withoutHeights).some((text) => /^◆ .+ short$/.test(text))).toBe(true);
    expect(textsOf(smallRoute()).some((text) => text.startsWith("◆"))).toBe(false);
  });

  it("dimension the distance beside a building against its limit, and what it lacks", () => {
    const barn = { id: "barn", spanId: "span-1", name: "Barn", offsetM: 20, lengthM: 4, kind: "building" } as const;
    const beside = (besideM: number) =>
      textsOf(withRows(smallRoute(), "structure", [{ ...barn, side: "left", besideM, heightM: 8, bottomM: null }]));
    expect(beside(6.096)).toContain("20 ft 0 in beside");
    expect(beside(6.096).some((text) => text.startsWith("◆"))).toBe(false);
    expect(beside(0.3048)).toContain("1 ft 0 in beside");
    expect(beside(0.3048).some((text) => /^◆ .+ short$/.test(text))).toBe(true);
    expect(beside(0).some((text) => text.endsWith(" beside"))).toBe(false);
  });

  it("say why nothing is known where nobody measured the ground", () => {
    const [pole] = [...smallRoute().pole.values()];
    if (!pole) throw new Error("no pole");
    const texts = textsOf(changed(smallRoute(), "pole", pole.id, { groundM: null }));
    expect(texts).toContain(`Nobody measured the ground at pole ${pole.tag}.`);
    expect(texts).toContain("not measured");
  });
});

describe("profiles of short lines", () => {
  it("share a sheet and the table of their spans, and each span is still shown once", () => {
    const route = windingRoute();
    const { sheets } = composeSet(openPlant(route), [], { kinds: ["profile"], paper: "ANSI D" });
    const { rows } = rowsOf(route);
    expect(sheets.length).toBeLessThan(rows.length / 2);
    const first = sheets.flatMap(({ marks }) =>
      marks.flatMap((mark) =>
        mark.kind === "text" && / to /.test(mark.text) && mark.part?.as === "cell" ? [mark.text] : [],
      ),
    );
    const names = [...route.span.values()].map((span) =>
      [span.fromPoleId, span.toPoleId].map((id) => route.pole.get(id)?.tag),
    );
    for (const [from, to] of names)
      expect(first.filter((text) => text === `${from} to ${to}` || text === `${to} to ${from}`)).toHaveLength(1);
  });
});
