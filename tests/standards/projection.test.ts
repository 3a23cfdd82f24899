import { describe, it } from "vitest";
import { openTransverseMercator } from "../../core/geodesy/transverseMercator.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const britishGrid: Source = {
  document: "EPSG Guidance Note 7-2, method 9807, worked example on the Airy ellipsoid",
  edition: "parameters seen, answer from memory",
  mark: "memory",
  tolerance: "one unit of the last printed digit: the note's series is short",
};

describe(sourceTitle(britishGrid), () => {
  it("50 30 N, 0 30 E lies at 577274.99 east, 69740.50 north", () => {
    const grid = openTransverseMercator({
      originLonDeg: -2,
      originLatDeg: 49,
      centralScaleFrac: 0.9996012717,
      falseEastM: 400000,
      falseNorthM: -100000,
      semiMajorM: 6377563.396,
      inverseFlattening: 299.32496,
    });
    const { eastM, northM } = grid.toGrid([0.5, 50.5]);
    expectPrinted(eastM, "577274.99", 1);
    expectPrinted(northM, "69740.50", 1);
    expectPrinted(eastM, "577274.984");
    expectPrinted(northM, "69740.492");
  });
});

/** A zone of the Universal Transverse Mercator grid, northern half. */
function openNorthZone(zone: number) {
  return openTransverseMercator({
    originLonDeg: zone * 6 - 183,
    originLatDeg: 0,
    centralScaleFrac: 0.9996,
    falseEastM: 500000,
    falseNorthM: 0,
    semiMajorM: 6378137,
    inverseFlattening: 298.257223563,
  });
}

const gridSquare: Source = {
  document: "manual of a public geodesic tool, centre of grid square 38SMB4488",
  edition: "place printed to 0.00001 degree, near 1 m",
  mark: "memory",
  tolerance: "1 m, what the printed place can tell",
};

describe(sourceTitle(gridSquare), () => {
  it("33.33424 N, 44.40363 E lies at 444500 east, 3688500 north in zone 38", () => {
    const { eastM, northM } = openNorthZone(38).toGrid([44.40363, 33.33424]);
    expectPrinted(eastM, "444500", 1);
    expectPrinted(northM, "3688500", 1);
    expectPrinted(eastM, "444500.203");
    expectPrinted(northM, "3688500.544");
  });
});

const zone17: Source = {
  document: "Universal Transverse Mercator zone 17 on WGS 84",
  edition: "Krueger series",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(zone17), () => {
  it("40 N, 83 W lies at 329274.506 east, 4429672.973 north in zone 17", () => {
    const { eastM, northM } = openNorthZone(17).toGrid([-83, 40]);
    expectPrinted(eastM, "329274.506");
    expectPrinted(northM, "4429672.973");
  });
});
