import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { portReading } from "../../../core/plant/portReading.ts";
import type { SheetKind } from "../../../core/sheets/book.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const powered = () =>
  changed(smallRoute(), "opticalClass", "class-b-plus", { hubLaunchLeastDbm: 1.5, hubLaunchMostDbm: 5 });
const marksOf = (route: Route, kind: SheetKind, title: string) =>
  composeSet(openPlant(route), [], { kinds: [kind] })
    .sheets.filter((one) => one.title.startsWith(title))
    .flatMap((one) => one.marks);
const textsOf = (route: Route, kind: SheetKind, title: string) =>
  marksOf(route, kind, title).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

const reading = portReading(openPlant(powered()), "terminal-1", 1);
if (reading.kind === "unknown" || reading.arrives === null) throw new Error("no light at the port");
const { leastDbm, mostDbm } = reading.arrives;
const portCount = 8;

describe("the expected light on a terminal's sheet", () => {
  it("stands at every port, spare ones too, least and most", () => {
    const texts = textsOf(powered(), "terminal", "Terminal T1");
    expect(texts.filter((one) => one === leastDbm.toFixed(1))).toHaveLength(portCount);
    expect(texts.filter((one) => one === mostDbm.toFixed(1))).toHaveLength(portCount);
  });

  it("has an empty field under every port, as wide as a figure by hand needs", () => {
    const fields = marksOf(powered(), "terminal", "Terminal T1").filter(
      (mark) => mark.kind === "line" && mark.layer === "tables" && mark.closed && fieldHeightMm(mark.pointsMm) > 6,
    );
    expect(fields.filter((mark) => mark.kind === "line" && mark.pen === "thin" && mark.fill === null)).toHaveLength(
      portCount,
    );
  });

  it("says the wavelength, the loss both ways and how far its source was read", () => {
    const all = textsOf(powered(), "terminal", "Terminal T1").join("\n");
    expect(all).toContain("Light at the ports at 1490 nm, measured before the drops are plugged in");
    expect(all).toContain("Ports 1 to 8: loss from the hub's output");
    expect(all).toMatch(/at 1310 nm\./);
    expect(all).toMatch(/By class .*\(.*\)\./);
  });

  it("says that the power is not known where the class does not tell what the hub launches", () => {
    const all = textsOf(smallRoute(), "terminal", "Terminal T1").join(" ");
    expect(all).toContain("power not known, class");
    expect(all).toContain("does not say what the hub launches; loss from the hub's output");
  });

  it("says why no figure stands at a port without light", () => {
    const dark = changed(powered(), "fiberUse", "use-1", { splitterId: null });
    expect(textsOf(dark, "terminal", "Terminal T1").join(" ")).toContain(
      "Ports 1 to 8: not known. No fiber feeds the splitter behind the port.",
    );
  });
});

describe("the port and drop schedule", () => {
  const bothTerminals = 2 * portCount;

  it("gives the expected light of every port", () => {
    const range = /^-?\d+\.\d to -?\d+\.\d$/;
    const ranges = textsOf(powered(), "schedule", "Port").filter((one) => range.test(one));
    expect(ranges).toHaveLength(bothTerminals);
    expect(ranges[0]).toBe(`${leastDbm.toFixed(1)} to ${mostDbm.toFixed(1)}`);
  });

  it("says at every port that it is not known where nobody can tell", () => {
    expect(textsOf(smallRoute(), "schedule", "Port").filter((one) => one === "not known")).toHaveLength(bothTerminals);
  });
});

function fieldHeightMm(points: readonly (readonly [number, number])[]): number {
  const heights = points.map(([, y]) => y);
  return Math.max(...heights) - Math.min(...heights);
}
