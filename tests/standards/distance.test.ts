import { describe, it } from "vitest";
import { distanceM } from "../../core/geodesy/distance.ts";
import { metresPerFoot } from "../../core/units/constants.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const karney: Source = {
  document: "Karney, Algorithms for geodesics, J. Geodesy 87; example in the README of a public port",
  edition: "2013",
  mark: "seen",
  tolerance: "one unit of the last printed digit, 0.001 mm: the next digits, 0.9552337, are not printed as rounded",
};

describe(sourceTitle(karney), () => {
  it("37.87622 N 122.23558 W to 9.4047 S 147.1597 E is 10700471.955233 m", () => {
    expectPrinted(distanceM([-122.23558, 37.87622], [147.1597, -9.4047]), "10700471.955233", 1);
  });
});

const standardExample: Source = {
  document: "standard example of the same routines: inputs seen, distance from memory",
  edition: "WGS 84",
  mark: "memory",
  tolerance: "half the last printed digit; one digit, since a second method gives 5551759.400334",
};

describe(sourceTitle(standardExample), () => {
  it("40.6 N 73.8 W to 51.6 N 0.5 W is 5551759.400 m", () => {
    expectPrinted(distanceM([-73.8, 40.6], [-0.5, 51.6]), "5551759.400", 1);
  });
});

const flinders: Source = {
  document: "Geoscience Australia, GDA technical manual, Flinders Peak to Buninyong",
  edition: "GRS 80, whose axis differs from WGS 84 by 0.1 mm in 6400 km: nothing at this length",
  mark: "memory",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(flinders), () => {
  it("Flinders Peak to Buninyong is 54972.271 m", () => {
    const flindersPeak = [144 + 25 / 60 + 29.5244 / 3600, -(37 + 57 / 60 + 3.7203 / 3600)] as const;
    const buninyong = [143 + 55 / 60 + 35.3839 / 3600, -(37 + 39 / 60 + 10.1561 / 3600)] as const;
    expectPrinted(distanceM(flindersPeak, buninyong), "54972.271");
  });
});

const degrees: Source = {
  document: "one degree on WGS 84",
  edition: "a pi / 180 on the equator; the meridian by its arc",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(degrees), () => {
  it.each([
    ["of longitude on the equator", [0, 0], [1, 0], "111319.4908"],
    ["of latitude from the equator", [0, 0], [0, 1], "110574.3886"],
    ["of latitude from 45 N", [0, 45], [0, 46], "111141.5485"],
  ] as const)("one degree %s has its known length", (_name, from, to, printed) => {
    expectPrinted(distanceM(from, to), printed);
  });
});

const spans: Source = {
  document: "spans near 40 N 83 W on WGS 84",
  edition: "a second method, iterated on the ellipsoid",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(spans), () => {
  it.each([
    ["north", [-83, 40.0009], "99.93118", "327.8582"],
    ["east", [-82.9988, 40], "102.47263", "336.1963"],
    ["north-east", [-82.9995, 40.0005], "70.03704", "229.7803"],
  ] as const)("a span to the %s has its length on the ellipsoid, not on a sphere", (_way, to, metres, feet) => {
    const spanM = distanceM([-83, 40], to);
    expectPrinted(spanM, metres);
    expectPrinted(spanM / metresPerFoot, feet);
  });
});
