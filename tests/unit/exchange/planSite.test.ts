import { describe, expect, test } from "vitest";
import { readForceN } from "../../../core/exchange/siteValue.ts";
import { writeCsv } from "../../../core/exchange/writeCsv.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { applied, csv, planOf } from "./importRoute.ts";

const route = smallRoute();
const lengthM = route.span.get("span-1")?.lengthM ?? Number.NaN;
const taken = (kind: Parameters<typeof planOf>[1]["kind"], text: string, on = route) => {
  const plan = planOf(on, { kind, table: csv(text) });
  return {
    rows: plan.rows.map((row) => row.after),
    bad: plan.bad.map((one) => [one.line, one.column, one.what]),
    plan,
  };
};

describe("ground points", () => {
  test("lie in their span by the distance from the pole named first, whichever that is", () => {
    const { rows, bad } = taken(
      "groundPoint",
      "From pole,To pole,Distance ft,Ground elevation ft\nP1,P2,10,328\nP2,P1,10,330\nP1,P2,10,329\n",
    );
    expect(rows).toMatchObject([
      { spanId: "span-1", offsetM: 3.048, groundM: 99.9744 },
      { spanId: "span-1", offsetM: expect.closeTo(lengthM - 3.048, 3), groundM: 100.584 },
    ]);
    expect(bad).toEqual([[4, "Distance ft", "The same ground point is in the file already."]]);
  });

  test("without an elevation, or past the far pole, are told by line and column", () => {
    const { rows, bad } = taken(
      "groundPoint",
      "from,to,distance m,elevation m\nP1,P2,5,\nP1,P2,500,99\nP1,P9,5,99\n,P2,5,99\n",
    );
    expect(rows).toEqual([]);
    expect(bad).toEqual([
      [2, "elevation m", "The ground point has no elevation."],
      [3, "distance m", "The ground point lies past the far pole."],
      [4, "from", "There is no span between these poles in the route."],
      [5, "from", "The ground point does not name both poles of its span."],
    ]);
  });
});

describe("structures", () => {
  test("told from the far pole stand as far from it and on the other hand", () => {
    const text = "from,to,distance ft,kind,along ft,beside ft,side,top ft,name\n";
    const { rows } = taken("structure", `${text}P1,P2,20,building,30,12,left,16,Mill\nP2,P1,20,lit sign,4,9,L,20,\n`);
    expect(rows).toMatchObject([
      {
        kind: "building",
        offsetM: 6.096,
        lengthM: 9.144,
        besideM: 3.6576,
        side: "left",
        heightM: 4.8768,
        name: "Mill",
      },
      { kind: "litSign", offsetM: expect.closeTo(lengthM - 6.096, 3), side: "right" },
    ]);
  });

  test("beside the line must say on which side; under it they need not", () => {
    const { rows, bad } = taken(
      "structure",
      "from,to,distance,what,along,beside,side,top\nP1,P2,20,shed,10,6,,9\nP1,P2,20,shed,10,0,,9\nP1,P2,30,castle,10,0,,9\n",
    );
    expect(rows).toMatchObject([{ kind: "building", besideM: 0, side: "left" }]);
    expect(bad).toEqual([
      [2, "side", "The structure does not say on which side of the line it stands."],
      [4, "what", '"castle" is none of the kinds known here.'],
    ]);
  });
});

describe("guys", () => {
  const heading = "pole,strand,height ft,lead ft,bearing,anchor holds lbf\n";
  const [strand] = [...route.strandType.values()];

  test("stand by the compass: west of the pole is a bearing of 270", () => {
    const { rows } = taken("guy", `${heading}P2,${strand?.name},20,15,270,8000\nP3,,20,15,0,\n`);
    expect(rows).toMatchObject([
      { poleId: "pole-2", strandTypeId: strand?.id, leadM: 4.572, directionRad: -Math.PI, anchorN: 35585.77 },
      { poleId: "pole-3", directionRad: Math.PI / 2, anchorN: null },
    ]);
  });

  test("of an unknown strand, pole or direction are told with what would do", () => {
    const { rows, bad } = taken(
      "guy",
      `${heading}P2,rope,20,15,10,\nP9,,20,15,10,\nP3,,20,15,400,\nP3,,20,15,10,strong\nP4,,20,15,10,35 kN\nP4,,20,15,20,8000\n`,
    );
    expect(rows).toMatchObject([{ poleId: "pole-4", anchorN: 35000 }, { anchorN: 35585.77 }]);
    expect(bad).toEqual([
      [2, "strand", "The catalogue has no strand of this name."],
      [3, "pole", "There is no pole with this tag in the route."],
      [4, "bearing", "The guy has no bearing."],
      [5, "anchor holds lbf", '"strong" cannot be read as a force.'],
    ]);
  });
});

test("sags of others' wires are taken once for each wire of a span, and replace the former where asked", () => {
  const text = "from,to,owner,kind,sag\nP2,P1,Telephone,telephone,14 in\nP1,P2,Telephone,comm,15 in\n";
  const { rows, bad, plan } = taken("wireSag", text);
  expect(rows).toMatchObject([{ spanId: "span-1", owner: "Telephone", kind: "communication", sagM: 0.3556 }]);
  expect(bad).toHaveLength(1);
  const there = applied(route, plan);
  const again = csv("from,to,owner,kind,sag m\nP1,P2,Telephone,communication,0.5\n");
  expect(planOf(there, { kind: "wireSag", table: again }).rows).toEqual([]);
  expect(planOf(there, { kind: "wireSag", table: again, onExisting: "replace" }).rows).toMatchObject([
    { before: { sagM: 0.3556 }, after: { sagM: 0.5 } },
  ]);
});

test("a force is read with its unit, else in the column's", () => {
  expect(readForceN("35 kN", "lbf")).toEqual({ ok: true, value: 35000 });
  expect(readForceN("8,000", "lbf")).toEqual({ ok: true, value: 35585.77 });
  expect(readForceN("0", "N")).toMatchObject({ ok: false });
});

const under = { livingUnitId: "unit-1", name: "=Lane", fromUnitM: 4.5, widthM: 3 };

test("things under drops are taken by address, a roof with its elevation, and the same thing once", () => {
  const text =
    "address,surface,distance ft,width ft,elevation ft\n1 test rd.,driveway,20,10,\n1 Test Rd,roof,40,12,\n1 Test Rd,drive,20,10,\n9 Nowhere,road,5,5,\n2 Test Rd,shed,10,12,340 ft\n";
  const { rows, bad } = taken("dropCrossing", text);
  expect(rows).toMatchObject([
    { livingUnitId: "unit-1", surface: "driveway", fromUnitM: 6.096, widthM: 3.048, surfaceM: null },
    { livingUnitId: "unit-2", surface: "roof", surfaceM: expect.closeTo(103.632, 3) },
  ]);
  expect(bad.map(([line, column]) => [line, column])).toEqual([
    [3, "elevation ft"],
    [4, "address"],
    [5, "address"],
  ]);
});

describe("our own lists of what stands about the line read back", () => {
  const full: Route = withRows(
    withRows(route, "groundPoint", [{ id: "ground-1", spanId: "span-2", offsetM: 12.5, groundM: 99.25 }], "wireSag", [
      { id: "sag-1", spanId: "span-2", owner: "=Tel", kind: "communication", sagM: 0.5 },
    ]),
    "structure",
    [
      {
        id: "structure-1",
        spanId: "span-3",
        name: "Mill",
        kind: "walkedRoof",
        offsetM: 20,
        lengthM: 8.25,
        besideM: 3.5,
        side: "right",
        heightM: 6,
        bottomM: 4.5,
      },
    ],
    "dropCrossing",
    [
      { ...under, id: "way-1", surface: "road", surfaceM: null },
      { ...under, id: "way-2", surface: "roof", surfaceM: 103.25 },
    ],
  );

  test.each(["attachment", "crossing", "groundPoint", "structure", "guy", "wireSag", "dropCrossing"] as const)(
    "%s",
    (kind) => {
      expect(full[kind].size).toBeGreaterThan(0);
      const bare = { ...full, [kind]: new Map() };
      const plan = planOf(bare, { kind, table: csv(writeCsv(full, kind)), onBad: "refuse" });
      expect(plan.bad).toEqual([]);
      const lines = (on: Route) => writeCsv(on, kind).split("\r\n").sort();
      expect(lines(applied(bare, plan))).toEqual(lines(full));
    },
  );
});
