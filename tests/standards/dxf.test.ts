import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import DxfParser from "dxf-parser";
import { afterAll, describe, expect, it } from "vitest";
import { type DxfEntity, extentsOf } from "../../core/dxf/drawing.ts";
import { writeDxf } from "../../core/dxf/writeDxf.ts";
import { routeDrawing } from "../../core/dxf/writeRouteDxf.ts";
import { writeSheetDxf } from "../../core/dxf/writeSheetDxf.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import { estateRoute } from "../fixtures/sheets/estateRoute.ts";
import { windingRoute } from "../fixtures/sheets/windingRoute.ts";

const route = windingRoute();
const drawing = routeDrawing(openPlant(route));
const text = writeDxf(drawing);
const kindOf = (one: DxfEntity): string =>
  one.kind === "line"
    ? one.points.length === 2 && one.width === 0 && !one.bulges
      ? "LINE"
      : "POLYLINE"
    : one.kind.toUpperCase();
const counted = (names: readonly string[]) =>
  Object.fromEntries([...new Set(names)].sort().map((name) => [name, names.filter((one) => one === name).length]));

// DXF R12 (AC1009): what two readers that are not ours make of it. dxf-parser 1.1.2 is always there; ezdxf (0.18.1 tried) where installed.
describe("a route as DXF, read by dxf-parser", () => {
  const read = new DxfParser().parseSync(text);

  it("is of edition R12, its lines end in CR LF, and its units are feet", () => {
    expect(read?.header).toMatchObject({ $ACADVER: "AC1009", $INSUNITS: 2 });
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });

  it("has the entities, layers and blocks that were drawn", () => {
    expect(counted(read?.entities.map((one) => one.type) ?? [])).toEqual(counted(drawing.entities.map(kindOf)));
    expect(Object.keys(read?.tables.layer.layers ?? {}).sort()).toEqual(
      ["0", ...drawing.layers.map((one) => one.name)].sort(),
    );
    expect(Object.keys(read?.blocks ?? {}).sort()).toEqual(drawing.blocks.map((one) => one.name).sort());
  });

  it("reaches as far as it says", () => {
    const { low, high } = extentsOf(drawing.entities);
    const corner = ([x, y]: readonly [number, number]) => ({ x: expect.closeTo(x, 5), y: expect.closeTo(y, 5), z: 0 });
    expect(read?.header).toMatchObject({ $EXTMIN: corner(low), $EXTMAX: corner(high) });
  });
});

const folder = mkdtempSync(join(tmpdir(), "strandwright-dxf-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const audit = `
import collections, json, sys, ezdxf
from ezdxf import bbox
def audited(path):
    drawing = ezdxf.readfile(path)
    found = drawing.audit()
    model = list(drawing.modelspace())
    box = bbox.extents(one for one in model if one.dxftype() in ("LINE", "POLYLINE", "CIRCLE"))
    return {
        "errors": len(found.errors), "fixes": len(found.fixes),
        "counts": collections.Counter(one.dxftype() for one in model),
        "low": list(box.extmin)[:2], "high": list(box.extmax)[:2],
    }
print(json.dumps([audited(path) for path in sys.argv[1:]]))
`;
const python = ["python3", "/usr/bin/python3"].find((one) => spawnSync(one, ["-c", "import ezdxf"]).status === 0);

describe.skipIf(python === undefined)("a route as DXF, audited by ezdxf (needs python3-ezdxf)", () => {
  const audited = (contents: readonly string[]): readonly unknown[] => {
    const paths = contents.map((content, index) => {
      const path = join(folder, `${index}.dxf`);
      writeFileSync(path, content);
      return path;
    });
    return JSON.parse(execFileSync(python ?? "", ["-c", audit, ...paths], { encoding: "utf8" }));
  };

  it.each([
    ["in feet", windingRoute()],
    ["in metres", windingRoute({ unitSystem: "metric" })],
    ["of a real estate", estateRoute()],
  ])("has no fault, and its lines reach as far as ours, %s", (_, drawn) => {
    const ours = routeDrawing(openPlant(drawn));
    const { low, high } = extentsOf(ours.entities.filter((one) => one.kind === "line"));
    const near = (place: readonly number[]) => place.map((one) => expect.closeTo(one, 5));
    expect(audited([writeDxf(ours)])).toEqual([
      {
        errors: 0,
        fixes: 0,
        counts: counted(ours.entities.map(kindOf)),
        low: near(low),
        high: near(high),
      },
    ]);
  });

  it("finds no fault in a sheet of any kind either", () => {
    const { sheets } = composeSet(openPlant(route), []);
    const oneOfAKind = sheets.filter((one, index) => sheets.findIndex(({ kind }) => kind === one.kind) === index);
    expect(oneOfAKind.length).toBeGreaterThan(8);
    const found = audited(oneOfAKind.map((sheet) => writeSheetDxf(sheet)));
    expect(found).toEqual(found.map(() => expect.objectContaining({ errors: 0, fixes: 0 })));
  });
});
