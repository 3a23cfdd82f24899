import { describe, expect, it } from "vitest";
import { metresPerFoot, metresPerInch } from "../../core/units/constants.ts";
import { catalogueFigure } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const limitM = (id: string) => catalogueFigure("clearanceLimit", id, "limitM");

const nesc: Source = {
  document: "NESC Table 232-1, communication cables and messengers, ft",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(nesc), () => {
  it.each([
    ["nesc-rail", "23.5"],
    ["nesc-road", "15.5"],
    ["nesc-driveway", "15.5"],
    ["nesc-field", "15.5"],
    ["nesc-pedestrian", "9.5"],
    ["nesc-water", "14.0"],
    ["nesc-sailingWater20", "17.5"],
    ["nesc-sailingWater200", "25.5"],
    ["nesc-sailingWater2000", "31.5"],
    ["nesc-sailingWater", "37.5"],
    ["nesc-stateHighway", "15.5"],
    ["nesc-alongStreet", "15.5"],
    ["nesc-alongRoad", "15.5"],
    ["nesc-roadside", "13.5"],
    ["nesc-dropRoad", "15.5"],
    ["nesc-homeDriveway", "15.5"],
    ["nesc-dropLowDriveway", "11.5"],
  ])("%s asks for %s ft", (id, printedFt) => {
    expectPrinted(limitM(id) / metresPerFoot, printedFt);
  });

  it.each(["20", "200", "2000", ""])(
    "a launching area at sailing water %s asks for 5 ft more than the water",
    (acres) => {
      expectPrinted((limitM(`nesc-launch${acres}`) - limitM(`nesc-sailingWater${acres}`)) / metresPerFoot, "5.0");
    },
  );
});

const roofs: Source = {
  document: "National Electrical Code (NFPA 70), 800.44, communication drop over a roof, ft",
  edition: "2017 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(roofs), () => {
  it("a drop passes 8 ft over a roof", () => {
    expectPrinted(limitM("nesc-dropRoof") / metresPerFoot, "8.0");
  });
});

const structures: Source = {
  document: "NESC Table 234-1, communication cables beside and over buildings and signs, ft",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(structures), () => {
  it.each([
    ["nesc-buildingBeside", "4.5"],
    ["nesc-buildingOver", "3.0"],
    ["nesc-walkedRoofOver", "10.5"],
    ["nesc-signBeside", "3.0"],
    ["nesc-litSignBeside", "3.0"],
    ["nesc-signOver", "3.0"],
    ["nesc-walkedSignOver", "10.5"],
    ["nesc-buildingUnder", "3.0"],
    ["nesc-signUnder", "3.0"],
    ["nesc-litSignUnder", "3.0"],
    ["nesc-groundedLitSignBeside", "3.0"],
    ["nesc-chimneyOver", "3.0"],
    ["nesc-chimneyBeside", "3.0"],
  ])("%s asks for %s ft", (id, printedFt) => {
    expectPrinted(limitM(id) / metresPerFoot, printedFt);
  });
});

const separations: Source = {
  document: "NESC Tables 235-5, 238-1 and 238-2, Rules 235C2b, 235H and 238D, in",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(separations), () => {
  it.each([
    ["nesc-supplyAtPole", "40"],
    ["nesc-neutralAtPole", "30"],
    ["nesc-supplyInSpan", "30"],
    ["nesc-neutralInSpan", "22.5"],
    ["nesc-communicationAtPole", "12"],
    ["nesc-communicationInSpan", "4"],
    ["nesc-equipmentAtPole", "40"],
    ["nesc-bondedEquipmentAtPole", "30"],
    ["nesc-streetLightAtPole", "20"],
    ["nesc-bondedStreetLightAtPole", "4"],
    ["nesc-dripLoopAtPole", "12"],
  ])("%s asks for %s in", (id, printedIn) => {
    expectPrinted(limitM(id) / metresPerInch, printedIn);
  });

  it("above 8.7 kV to ground supply asks for 0.4 in more for each kV at the pole, three quarters of it in the span", () => {
    for (const [id, printedIn] of [
      ["nesc-supplyAtPole", "0.40"],
      ["nesc-equipmentAtPole", "0.40"],
      ["nesc-supplyInSpan", "0.30"],
    ] as const) {
      const figure = (column: string) => catalogueFigure("clearanceLimit", id, column);
      expectPrinted((figure("moreMPerV") * 1000) / metresPerInch, printedIn);
      expectPrinted(figure("coversV") / 1000, "8.70");
    }
  });

  it("in the span three quarters of the distance at the pole are kept from supply and neutral", () => {
    expect(limitM("nesc-supplyInSpan") / limitM("nesc-supplyAtPole")).toBeCloseTo(0.75, 12);
    expect(limitM("nesc-neutralInSpan") / limitM("nesc-neutralAtPole")).toBeCloseTo(0.75, 12);
  });
});

const california: Source = {
  document: "California PUC General Order 95, Table 1 and Rule 87.4-B2 of its predecessor, ft",
  edition: "original of 1941",
  mark: "seen",
  tolerance: "half the last digit",
};

const californiaDrops: Source = {
  document:
    "California PUC General Orders 95 and 64-A: service drops over a road and a driveway, a line along a country road, ft",
  edition: "54.8-B1 web text; 84.8-A2, 84.4-A3 historical",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(californiaDrops), () => {
  it.each([
    ["go95-dropRoad", "18.0"],
    ["go95-dropDriveway", "10.0"],
    ["go95-homeDriveway", "15.0"],
    ["go95-roadside", "13.0"],
  ])("%s asks for %s ft", (id, printedFt) => {
    expectPrinted(limitM(id) / metresPerFoot, printedFt);
  });
});

describe(sourceTitle(california), () => {
  it.each([
    ["go95-rail", "25.0"],
    ["go95-trolley", "26.0"],
    ["go95-stateHighway", "18.0"],
    ["go95-alongStreet", "18.0"],
    ["go95-alongRoad", "15.0"],
    ["go95-road", "18.0"],
    ["go95-driveway", "15.0"],
    ["go95-field", "15.0"],
    ["go95-pedestrian", "10.0"],
    ["go95-communicationAtPole", "1.0"],
    ["go95-walkedRoofOver", "8.0"],
  ])("%s asks for %s ft", (id, printedFt) => {
    expectPrinted(limitM(id) / metresPerFoot, printedFt);
  });

  it.each([
    "road",
    "stateHighway",
    "driveway",
    "homeDriveway",
    "alongStreet",
    "alongRoad",
    "rail",
    "trolley",
    "pedestrian",
    "field",
  ])("heat and ice may take a tenth of the clearance over a %s", (surface) => {
    for (const condition of ["hot", "iced"])
      expect(limitM(`go95-${surface}-${condition}`) / limitM(`go95-${surface}`)).toBeCloseTo(0.9, 6);
  });
});

const californiaSigns: Source = {
  document: "California PUC General Order 95, Table 2-A, ft",
  edition: "current web text",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(californiaSigns), () => {
  it.each([
    ["go95-walkedSignOver", "8.0"],
    ["go95-signOver", "2.0"],
    ["go95-litSignBeside", "3.0"],
    ["go95-signBeside", "0.5"],
    ["go95-groundedLitSignBeside", "0.5"],
    ["go95-signUnder", "0.5"],
    ["go95-litSignUnder", "2.0"],
  ])("%s asks for %s ft", (id, printedFt) => {
    expectPrinted(limitM(id) / metresPerFoot, printedFt);
  });
});

const unitedKingdom: Source = {
  document: "Electronic Communications Code (Conditions and Restrictions) Regulations 2003, reg. 4(2)(a) and (b)",
  edition: "SI 2003/2553",
  mark: "seen",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(unitedKingdom), () => {
  it("a line over the carriageway of a public highway hangs 5.5 m above it", () => {
    expectPrinted(limitM("uk-road"), "5.5");
    expectPrinted(limitM("uk-highLoadRoad"), "6.5");
  });
});

const predecessors: Source = {
  document: "California PUC General Orders 64 and 64-A, Rules 105(d)1, 93, 94 and 87.4-B2, in",
  edition: "superseded",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(predecessors), () => {
  it.each([
    ["go95-supplyAtPole", "72"],
    ["go95-equipmentAtPole", "40"],
    ["go95-communicationAtPole", "12"],
  ])("%s asks for %s in", (id, printedIn) => {
    expectPrinted(limitM(id) / metresPerInch, printedIn);
  });
});
