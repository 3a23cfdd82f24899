import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Route } from "../../core/model/route.ts";
import { clearanceLimitFor } from "../../core/plant/clearance.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { separationLimitFor, spanSeparations } from "../../core/plant/separation.ts";
import { spanSag } from "../../core/plant/spanSag.ts";
import { metresPerFoot, metresPerInch } from "../../core/units/constants.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";
import { withOnPole } from "../fixtures/route/oneMore.ts";
import { underSet } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const onPole: Source = {
  document: "NESC Tables 235-5, 238-1 and 238-2, Rule 238D: supply, equipment and street lights on a joint pole",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "0.1 mm",
};

describe(sourceTitle(onPole), () => {
  const at = (columns: Omit<Parameters<typeof withOnPole>[0], "heightM">, gapIn: number): Route =>
    underSet(withOnPole({ ...columns, heightM: 6.3 + gapIn * metresPerInch }), "clearance-nesc");
  const rules = ["supply-separation-at-pole", "street-light-separation", "communication-separation-at-pole"];
  const light2 = (route: Route) =>
    findingsOf(route).filter(({ ruleId, subjects }) => rules.includes(ruleId) && subjects[0]?.id === "light-2");

  it.each([
    ["a secondary", { kind: "secondary", voltageV: 120 }, 40],
    ["14.4 kV to ground: 5.7 kV more than 8.7", { kind: "primary", voltageV: 14_400 }, 42.28],
    ["a neutral bonded to the messenger", { kind: "neutral", bonded: true }, 30],
    ["a neutral that is not bonded", { kind: "neutral" }, 40],
    ["fiber on a grounded messenger in the supply space", { kind: "supplyFiber", bonded: true }, 30],
    ["fiber in the supply space, not bonded", { kind: "supplyFiber" }, 40],
    ["a tank", { kind: "equipment", voltageV: 7200 }, 40],
    ["a tank that is grounded and bonded", { kind: "equipment", voltageV: 7200, bonded: true }, 30],
    ["a street-light bracket", { kind: "streetLight" }, 20],
    ["a grounded street-light bracket", { kind: "streetLight", bonded: true }, 4],
    ["the drip loop of a street light", { kind: "dripLoop" }, 12],
    ["another messenger", { kind: "communication" }, 12],
  ] as const)("%s keeps %s to %s in over our strand", (_, columns, limitIn) => {
    expect(light2(at(columns, limitIn))).toEqual([]);
    const [hit, ...more] = light2(at(columns, limitIn - 0.004));
    expect(more).toEqual([]);
    expect(hit).toMatchObject({
      limit: expect.closeTo(limitIn * metresPerInch, 9),
      basis: { document: "NESC (IEEE C2)", edition: "2017/2023 numbering", mark: "memory" },
    });
  });

  it("a measured distance is never rounded up: a tenth of a millimetre short of 40 in is short", () => {
    expect(light2(at({ kind: "secondary", voltageV: 120 }, 40 - 0.1 / 25.4))).toHaveLength(1);
  });
});

const inSpan: Source = {
  document:
    "NESC Rules 233A, 235C2b and 235C2b(1)(a): three quarters of the pole's distance in the span, the upper wire at its largest sag",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "a millionth of a millimetre",
};

describe(sourceTitle(inSpan), () => {
  it("whatever its voltage and whether bonded, a wire keeps three quarters in the span of what it keeps at the pole", () => {
    const plant = openPlant(underSet(smallRoute(), "clearance-nesc"));
    const wire = fc.record({
      kind: fc.constantFrom("primary" as const, "secondary" as const, "neutral" as const, "supplyFiber" as const),
      voltageV: fc.integer({ min: 0, max: 40_000 }),
      bonded: fc.boolean(),
    });
    fc.assert(
      fc.property(wire, (other) => {
        const [atPole, along] = [
          separationLimitFor(plant, other, "AtPole"),
          separationLimitFor(plant, other, "InSpan"),
        ];
        expect((along?.limitM ?? 0) / (atPole?.limitM ?? 0)).toBeCloseTo(0.75, 9);
      }),
    );
  });

  it("over telephone our strand is taken at its largest sag, under ice, and telephone at the sag it was measured with", () => {
    const plant = openPlant(underSet(smallRoute(), "clearance-nesc"));
    const sag = spanSag(plant, "span-1");
    const separations = spanSeparations(plant, "span-1");
    if (sag.kind === "unknown" || separations.kind === "unknown") throw new Error("the small route hangs");
    const telephone = separations.wires.find((one) => one.party === "communication");
    expect(sag.iced.sagM).toBeGreaterThan(Math.max(sag.hot.sagM, sag.stringing.sagM));
    expect(telephone).toMatchObject({ weAreAbove: true, condition: "iced" });
    expect(telephone?.leastM).toBeCloseTo(6.3 - 5.3 - (sag.iced.sagM - (telephone?.otherSagM ?? 0)), 9);
  });
});

const premises: Source = {
  document: "California 8 CCR 2375.7: conductors of premises wiring on poles 1 ft apart where not on racks or brackets",
  edition: "as read",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(premises), () => {
  it("is what the California set asks between communication on a pole", () => {
    const plant = openPlant(underSet(smallRoute(), "clearance-go95"));
    expectPrinted((clearanceLimitFor(plant, "communicationAtPole")?.limitM ?? 0) / metresPerFoot, "1.0");
  });
});
