import { describe, expect, test } from "vitest";
import { planReadings } from "../../../core/exchange/planReadings.ts";
import { readCsv } from "../../../core/exchange/readCsv.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const signed = { by: "R. Vance", atIso: "2030-05-01" };

function planned(text: string) {
  const table = readCsv("readings.csv", text);
  if (!table.ok) throw new Error(table.fault.what);
  return planReadings(openPlant(smallRoute()), table.value, signed);
}

describe("a list of readings", () => {
  test("names things as they are drawn, and figures with their units", () => {
    const { inputs, bad } = planned(
      [
        "kind,name,port,along,reading,value,nm,by,date",
        "terminal,T1,,,offset,36 in,,,",
        "port,T1,3,,power,-19.4 dBm,1490,Crew 2,2030-04-30",
        "drop,1 Test Rd,,,house tag,T1-1,,,",
        "bond,P1,,,continuity,yes,,,",
        "pole,P1,,C1,mark,12004,,,",
      ].join("\n"),
    );
    expect(bad).toEqual([]);
    expect(inputs).toMatchObject([
      { kind: "terminal", subjectId: "terminal-1", what: "offset", value: 0.9144, by: "R. Vance" },
      { kind: "port", port: 3, what: "power", wavelengthNm: 1490, value: -19.4, by: "Crew 2", atIso: "2030-04-30" },
      { kind: "drop", subjectId: "drop-1", what: "houseTag", value: null, text: "T1-1" },
      { kind: "bond", subjectId: "pole-1", alongId: "section-1", what: "continuity", value: 1 },
      { kind: "pole", subjectId: "pole-1", alongId: "cable-1", what: "mark", value: 12004 },
    ]);
  });

  test.each([
    ["tower,T1,,offset,36 in,", "kind"],
    ["terminal,T9,,offset,36 in,", "name"],
    ["terminal,T1,,power,-19,1490", "reading"],
    ["terminal,T1,,offset,three foot,", "value"],
    ["port,T1,,power,-19,1490", "port"],
    ["port,T1,3,power,-19,", "nm"],
    ["port,T1,3,power,dark,1490", "value"],
    ["drop,1 Test Rd,,portOfDrop,2.5,", "value"],
  ])("a row that cannot be taken is told by its line and column: %s", (row, column) => {
    const { inputs, bad } = planned(`kind,name,port,reading,value,nm\n${row}`);
    expect(inputs).toEqual([]);
    expect(bad).toMatchObject([{ line: 2, column }]);
    expect(bad[0]?.accepted).not.toBe("");
  });

  test("a list without the headings it needs says which", () => {
    expect(planned("name,value\nT1,3").bad).toMatchObject([{ what: "The list has no column for kind, reading." }]);
  });
});
