import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { spanRuns } from "../../../core/plant/spanRuns.ts";
import { paperOf } from "../../../core/sheets/paper/paper.ts";
import { planRows } from "../../../core/sheets/plan/planRows.ts";
import { stripBoxOf } from "../../../core/sheets/plan/planSheet.ts";
import { alongStep, shows } from "../../../core/sheets/plan/stripStep.ts";
import { strips } from "../../../core/sheets/plan/strips.ts";
import { toGround, toPaper } from "../../../core/sheets/plan/view.ts";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const plant = openPlant(windingRoute());
const stripBox = stripBoxOf(paperOf("ANSI B"));
const cut = strips(plant, spanRuns(plant), stripBox);

describe("cutting a route into strips", () => {
  it("shows every metre of every span once", () => {
    const shown = new Map<string, number>();
    for (const step of cut.flatMap((strip) => strip.steps)) {
      shown.set(step.spanId, (shown.get(step.spanId) ?? 0) + step.endFrac - step.startFrac);
    }
    expect([...shown.keys()].sort()).toEqual([...plant.route().span.keys()].sort());
    for (const part of shown.values()) expect(part).toBeCloseTo(1, 12);
  });

  it("shows every terminal and every living unit once", () => {
    const terminals = [...plant.route().terminal.values()].map(
      (one) =>
        cut.flatMap((strip) =>
          strip.steps.filter((step) => step.spanId === one.spanId && shows(plant, step, one.offsetM)),
        ).length,
    );
    expect(new Set(terminals)).toEqual(new Set([1]));
    expect(cut.flatMap((strip) => strip.unitIds).sort()).toEqual([...plant.route().livingUnit.keys()].sort());
  });

  it("joins at the same station and names its neighbour on both sides", () => {
    for (const strip of cut) {
      const next = cut.find((one) => one.key === strip.after);
      if (!next) continue;
      expect(next.before).toBe(strip.key);
      expect(next.startM).toBeCloseTo(strip.endM, 9);
    }
  });

  it("runs each strip across the paper from left to right, inside its space", () => {
    for (const strip of cut) {
      const line = strip.steps.flatMap((step) =>
        [step.startFrac, step.endFrac].map((frac) => toPaper(strip.view, alongStep(plant, step, frac))),
      );
      expect(line.at(-1)?.[1]).toBeCloseTo(line[0]?.[1] ?? 0, 9);
      expect(line.at(-1)?.[0]).toBeGreaterThan(line[0]?.[0] ?? 0);
      for (const [x, y] of line)
        expect(x > stripBox.left && x < stripBox.right && y > stripBox.bottom && y < stripBox.top).toBe(true);
    }
  });

  it("measures on paper, times the scale, what lies on the ground", () => {
    for (const strip of cut) {
      for (const step of strip.steps) {
        const [a, b] = [toPaper(strip.view, alongStep(plant, step, 0)), toPaper(strip.view, alongStep(plant, step, 1))];
        const groundM = (Math.hypot(b[0] - a[0], b[1] - a[1]) * strip.view.scale.denominator) / 1000;
        expect(groundM).toBeCloseTo(step.lengthM, 6);
      }
    }
  });

  it("finds the ground under a point of the paper again", () => {
    const [strip] = cut;
    if (!strip) throw new Error("no strip");
    const ground = toGround(strip.view, [100, 120]);
    expect(toPaper(strip.view, ground)[0]).toBeCloseTo(100, 9);
    expect(toPaper(strip.view, ground)[1]).toBeCloseTo(120, 9);
  });

  it("keeps the line on the sheet where all houses stand far off on one side of it", () => {
    for (const strip of cut) {
      const [left, bottom, right, top] = strip.contentBounds;
      for (const contentBounds of [
        [left, bottom - 400, right, top],
        [left, bottom, right, top + 400],
      ] as const) {
        const [row] = planRows([{ ...strip, contentBounds }], stripBox).flat();
        expect(row?.strip.lineBounds[1]).toBeGreaterThan(stripBox.bottom);
        expect(row?.strip.lineBounds[3]).toBeLessThan(stripBox.top);
      }
    }
  });

  it("lays strips beside and under each other on the same sheets, in order and clear of each other", () => {
    const plain = openPlant({ ...smallRoute({ poleCount: 4 }), livingUnit: new Map() });
    const large = stripBoxOf(paperOf("ANSI D"));
    const short = strips(plain, spanRuns(plain), large).slice(0, 1);
    const many = Array.from({ length: 20 }, (_, index) =>
      short.map((one) => ({ ...one, key: `lateral-${index}` })),
    ).flat();
    const sheets = planRows(many, large);
    expect(sheets.flat().map((row) => row.strip.key)).toEqual(many.map((one) => one.key));
    expect(sheets.length).toBeLessThan(many.length / 4);
    for (const rows of sheets) {
      for (const { strip, box } of rows) {
        const [left, bottom, right, top] = strip.contentBounds;
        expect(left > box.left && right < box.right && bottom > box.bottom && top < box.top).toBe(true);
        expect(box.left >= large.left && box.right <= large.right + 1e-6).toBe(true);
        expect(box.bottom >= large.bottom - 1e-6 && box.top <= large.top).toBe(true);
      }
      const isClear = (one: (typeof rows)[number]["box"], other: typeof one) =>
        one.right < other.left || other.right < one.left || one.top < other.bottom || other.top < one.bottom;
      rows.forEach(({ box }, at) => {
        for (const other of rows.slice(at + 1)) expect(isClear(box, other.box)).toBe(true);
      });
    }
  });

  it("is drawn at a scale at which its longest span fits the smallest paper", () => {
    const box = stripBoxOf(paperOf("A4"));
    const route = smallRoute({ poleCount: 12 });
    const [first] = route.span.values();
    const far = route.pole.get("pole-12");
    if (!(first && far)) throw new Error("the route has lost its poles");
    const long = openPlant(changed(route, "pole", "pole-12", { eastM: far.eastM + 3 * first.lengthM }));
    for (const { lineBounds } of strips(long, spanRuns(long), box)) {
      expect(lineBounds[0]).toBeGreaterThanOrEqual(box.left);
      expect(lineBounds[2]).toBeLessThanOrEqual(box.right);
    }
  });

  it("is not stretched by living units that no drop may reach", () => {
    const route = smallRoute({ poleCount: 30 });
    const far = [...route.livingUnit].map(
      ([id, unit]) => [`far-${id}`, { ...unit, id: `far-${id}`, northM: unit.northM + 120 }] as const,
    );
    const cutFrom = (livingUnit: typeof route.livingUnit) => {
      const straight = openPlant({ ...route, livingUnit });
      return strips(straight, spanRuns(straight), stripBox).map((one) => [one.steps.length, one.view.scale.text]);
    };
    expect(cutFrom(new Map([...route.livingUnit, ...far]))).toEqual(cutFrom(route.livingUnit));
  });

  it("still walks the poles of a route that has no cable yet", () => {
    const bare = { ...without(smallRoute(), "cable", "cable-1"), cableRun: new Map() };
    expect(spanRuns(openPlant(bare)).map((run) => run.steps.map((step) => step.spanId))).toEqual([
      ["span-1", "span-2", "span-3"],
    ]);
  });
});
