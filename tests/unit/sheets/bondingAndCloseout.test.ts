import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { bondPlaces, farthestBondM, farthestBondPoles } from "../../../core/plant/bondPlaces.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { type Step, spanRuns } from "../../../core/plant/spanRuns.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import type { SheetKind } from "../../../core/sheets/book.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const route = windingRoute();
const plant = openPlant(route);
const stepsOf = (of: Route): readonly Step[] => spanRuns(openPlant(of)).flatMap((run) => run.steps);
const bonds = bondPlaces(plant, stepsOf(route));
const textsOf = (of: Route, kind: SheetKind) =>
  composeSet(openPlant(of), [], { kinds: [kind] }).sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

describe("the bonds of the strand", () => {
  it("stand at both ends of every section and at the pole of every terminal", () => {
    for (const section of route.strandSection.values()) {
      const own = bonds.filter((one) => one.sectionId === section.id);
      expect(own[0]?.why[0]).toBe("strand end");
      expect(own.at(-1)?.why[0]).toBe("strand end");
    }
    const bonded = new Set(bonds.map((one) => one.poleId));
    for (const id of route.terminal.keys()) expect(bonded).toContain(terminalHang(plant, id).poleId);
  });

  it("are never farther apart than a quarter mile where spans allow it, nor by more than four poles", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 20, max: 180, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (lengths) => {
          const spans = [...smallRoute().span.keys()];
          const stretched = spans.reduce(
            (one, id, index) => changed(one, "span", id, { lengthM: lengths[index % lengths.length] ?? 50 }),
            smallRoute(),
          );
          const steps = stepsOf(stretched);
          for (const { sinceM } of bondPlaces(openPlant(stretched), steps))
            expect(sinceM ?? 0).toBeLessThanOrEqual(farthestBondM);
        },
      ),
      { numRuns: 40 },
    );
    const order = stepsOf(route);
    for (const section of route.strandSection.values()) {
      const poles = order
        .filter((one) => route.span.get(one.spanId)?.strandSectionId === section.id)
        .flatMap((one, index) => (index === 0 ? [one.fromPoleId, one.toPoleId] : [one.toPoleId]));
      const at = bonds.filter((one) => one.sectionId === section.id).map((one) => poles.indexOf(one.poleId));
      for (const [index, place] of at.entries())
        expect(place - (at[index - 1] ?? place)).toBeLessThanOrEqual(farthestBondPoles);
    }
  });

  it("are told on the schedule with the neutral of the pole and where each rule was read", () => {
    const texts = textsOf(route, "bonding");
    expect(texts.filter((text) => text.startsWith("strand end"))).toHaveLength(2 * route.strandSection.size);
    expect(texts.join(" ")).toContain("[seen, historical]");
    expect(texts.join(" ")).toContain("[from memory]");
  });
});

describe("the closeout forms", () => {
  const texts = textsOf(route, "closeout");
  const count = (wanted: string) => texts.filter((text) => text === wanted).length;

  it("have a row for every pole with our strand, every span, every terminal and every port", () => {
    for (const { tag } of route.pole.values()) expect(count(tag)).toBeGreaterThanOrEqual(1);
    for (const { name, terminalModelId } of route.terminal.values()) {
      expect(count(name)).toBeGreaterThanOrEqual(1);
      const ports = route.terminalModel.get(terminalModelId)?.portCount ?? 0;
      for (let port = 1; port <= ports; port += 1) expect(count(`${name}-${port}`)).toBeGreaterThanOrEqual(1);
    }
  });

  it("print no measured figure: those are for the field to write", () => {
    expect(texts).toContain("Sag measured");
    expect(texts).toContain(
      "Write what was built and measured, not what was drawn. A box left empty says that nobody looked. Light by source and power meter, cords referenced before: TIA-526-7, IEC 61280-4-2 [from memory].",
    );
    expect(texts.some((text) => /-?\d+\.\d+ dBm/.test(text))).toBe(false);
  });
});
