import { fixedText } from "../units/fixedText.ts";
import { type DxfDrawing, type DxfEntity, type DxfPoint, type DxfUnit, extentsOf } from "./drawing.ts";
import { dxfText } from "./dxfText.ts";

/** Codes of the units a drawing may be in. */
const unitCodes: Readonly<Record<DxfUnit, number>> = { ft: 2, mm: 4, m: 6 };

const endOfLine = "\r\n";

/**
 * A drawing as DXF text, edition R12. The same drawing gives the same text.
 *
 * @source DXF reference of R12 (AC1009), from memory; read back by two readers that are not ours, see tests/standards/dxf.test.ts
 */
export function writeDxf(drawing: DxfDrawing): string {
  const sections = [
    section("HEADER", header(drawing)),
    section("TABLES", tables(drawing)),
    section("BLOCKS", drawing.blocks.flatMap(block)),
    section("ENTITIES", drawing.entities.flatMap(entity)),
  ];
  return [...sections.flat(), ...groups(0, "EOF"), ""].join(endOfLine);
}

/** Groups, each a code and its value in turn. The code tells what the value is: from 10 a figure, from 60 a whole number. */
function groups(...codesAndValues: readonly (number | string)[]): readonly string[] {
  return codesAndValues.flatMap((value, index) => {
    if (index % 2 === 0) return [];
    const code = Number(codesAndValues[index - 1]);
    const isFigure = code >= 10 && code < 60;
    return [String(code).padStart(3), isFigure ? figure(Number(value)) : String(value)];
  });
}

function figure(value: number): string {
  return fixedText(value, 6).replace(/(\.\d+?)0+$/, "$1");
}

/** A place under the codes of a corner: 10, 20 and 30 for the first. */
function place(first: number, [x, y]: DxfPoint): readonly string[] {
  return groups(first, x, first + 10, y, first + 20, 0);
}

function section(name: string, body: readonly string[]): readonly string[] {
  return [...groups(0, "SECTION", 2, name), ...body, ...groups(0, "ENDSEC")];
}

function header({ unit, entities }: DxfDrawing): readonly string[] {
  const { low, high } = extentsOf(entities);
  return [
    ...groups(9, "$ACADVER", 1, "AC1009", 9, "$DWGCODEPAGE", 3, "ASCII", 9, "$INSUNITS", 70, unitCodes[unit]),
    ...groups(9, "$INSBASE", 10, 0, 20, 0, 30, 0, 9, "$LTSCALE", 40, 1),
    ...groups(9, "$EXTMIN"),
    ...place(10, low),
    ...groups(9, "$EXTMAX"),
    ...place(10, high),
  ];
}

function tables(drawing: DxfDrawing): readonly string[] {
  const [dash, gap] = drawing.dash;
  const layerTable = [{ name: "0", colour: 7 }, ...drawing.layers];
  return [
    ...table("VPORT", [viewOf(drawing)]),
    ...table("LTYPE", [lineType("CONTINUOUS", "Solid line", []), lineType("DASHED", "Dashed line", [dash, -gap])]),
    ...table(
      "LAYER",
      layerTable.map(({ name, colour }) => groups(0, "LAYER", 2, name, 70, 0, 62, colour, 6, "CONTINUOUS")),
    ),
    ...table("STYLE", [groups(0, "STYLE", 2, "STANDARD", 70, 0, 40, 0, 41, 1, 50, 0, 71, 0, 42, 1, 3, "txt", 4, "")]),
  ];
}

function table(name: string, entries: readonly (readonly string[])[]): readonly string[] {
  return [...groups(0, "TABLE", 2, name, 70, entries.length), ...entries.flat(), ...groups(0, "ENDTAB")];
}

/** What is seen on opening: everything, from above, in one view. */
function viewOf({ entities }: DxfDrawing): readonly string[] {
  const { low, high } = extentsOf(entities);
  const [width, height] = [Math.max(1, high[0] - low[0]), Math.max(1, high[1] - low[1])];
  const aspect = 1.6;
  return [
    ...groups(0, "VPORT", 2, "*ACTIVE", 70, 0, 10, 0, 20, 0, 11, 1, 21, 1),
    ...groups(12, (low[0] + high[0]) / 2, 22, (low[1] + high[1]) / 2, 13, 0, 23, 0, 14, 1, 24, 1, 15, 1, 25, 1),
    ...groups(16, 0, 26, 0, 36, 1, 17, 0, 27, 0, 37, 0),
    ...groups(40, Math.max(height, width / aspect) * 1.05, 41, aspect, 42, 50, 43, 0, 44, 0, 50, 0, 51, 0),
    ...groups(71, 0, 72, 100, 73, 1, 74, 1, 75, 0, 76, 0, 77, 0, 78, 0),
  ];
}

function lineType(name: string, words: string, pattern: readonly number[]): readonly string[] {
  const lengthOfAll = pattern.reduce((sum, one) => sum + Math.abs(one), 0);
  return [
    ...groups(0, "LTYPE", 2, name, 70, 0, 3, words, 72, 65, 73, pattern.length, 40, lengthOfAll),
    ...pattern.flatMap((one) => groups(49, one)),
  ];
}

function block({ name, entities }: DxfDrawing["blocks"][number]): readonly string[] {
  return [
    ...groups(0, "BLOCK", 8, "0", 2, name, 70, 0, 10, 0, 20, 0, 30, 0, 3, name),
    ...entities.flatMap(entity),
    ...groups(0, "ENDBLK", 8, "0"),
  ];
}

function entity(one: DxfEntity): readonly string[] {
  switch (one.kind) {
    case "line":
      return line(one);
    case "circle":
      return [...head("CIRCLE", one), ...place(10, one.centre), ...groups(40, one.radius)];
    case "solid": {
      const [a, b, c, d = c] = one.corners;
      if (!(a && b && c && d)) throw new RangeError("a solid has three or four corners");
      return [...head("SOLID", one), ...place(10, a), ...place(11, b), ...place(12, d), ...place(13, c)];
    }
    case "text":
      return text(one);
    case "insert":
      return [
        ...head("INSERT", one),
        ...groups(2, one.block),
        ...place(10, one.at),
        ...groups(41, one.mirrored ? -1 : 1, 42, 1, 43, 1, 50, degrees(one.turnRad)),
      ];
    default:
      return assertNever(one);
  }
}

function head(name: string, { layer, colour }: DxfEntity): readonly string[] {
  return [...groups(0, name, 8, layer), ...(colour === undefined ? [] : groups(62, colour))];
}

/** Two points without a width make a LINE, which every program snaps to; all else a POLYLINE. */
function line(one: Extract<DxfEntity, { kind: "line" }>): readonly string[] {
  const dashed = one.dashed ? groups(6, "DASHED") : [];
  const [from, to] = one.points;
  if (from && to && one.points.length === 2 && one.width === 0 && !one.bulges) {
    return [...head("LINE", one), ...dashed, ...place(10, from), ...place(11, to)];
  }
  const vertex = (point: DxfPoint, bulge: number) => [
    ...groups(0, "VERTEX", 8, one.layer),
    ...place(10, point),
    ...(bulge === 0 ? [] : groups(42, bulge)),
  ];
  return [
    ...head("POLYLINE", one),
    ...dashed,
    ...groups(66, 1, 10, 0, 20, 0, 30, 0, 70, one.closed ? 1 : 0, 40, one.width, 41, one.width),
    ...one.points.flatMap((point, index) => vertex(point, one.bulges?.[index] ?? 0)),
    ...groups(0, "SEQEND", 8, one.layer),
  ];
}

/** How a text lies: fitted between two places. */
const fitted = 5;

function text(one: Extract<DxfEntity, { kind: "text" }>): readonly string[] {
  const half = one.width / 2;
  const [dx, dy] = [half * Math.cos(one.turnRad), half * Math.sin(one.turnRad)];
  return [
    ...head("TEXT", one),
    ...place(10, [one.at[0] - dx, one.at[1] - dy]),
    ...groups(40, one.height, 1, dxfText(one.text), 50, degrees(one.turnRad), 7, "STANDARD", 72, fitted),
    ...place(11, [one.at[0] + dx, one.at[1] + dy]),
  ];
}

function degrees(turnRad: number): number {
  return ((((turnRad * 180) / Math.PI) % 360) + 360) % 360;
}

function assertNever(one: never): never {
  throw new Error(`no way to write ${JSON.stringify(one)}`);
}
