import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { planImport } from "../../../core/exchange/planImport.ts";
import { largestFileBytes, readTable } from "../../../electron/host/readTable/readTable.ts";
import { bareRoute } from "../exchange/importRoute.ts";
import { workbook } from "./workbook.ts";

const fixture = (name: string): Uint8Array => readFileSync(new URL(`../../fixtures/exchange/${name}`, import.meta.url));
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("files brought in", () => {
  test.each([
    ["poles.csv", bytesOf("tag,lon\nP1,1\n"), "line"],
    ["poles.tsv", bytesOf("tag\tlon\nP1\t1\n"), "line"],
    [
      "poles.xlsx",
      workbook({
        A: [
          ["tag", "lon"],
          ["P1", 1],
        ],
      }),
      "row",
    ],
    [
      "workbook named csv.csv",
      workbook({
        A: [
          ["tag", "lon"],
          ["P1", 1],
        ],
      }),
      "row",
    ],
    ["poles.geojson", bytesOf('{"type":"Point","coordinates":[1,2]}'), "feature"],
    ["poles.kml", bytesOf("<?xml version='1.0'?><kml><Placemark/></kml>"), "placemark"],
    ["KML named text.txt", bytesOf("\uFEFF<k:kml xmlns:k='u'><k:Placemark/></k:kml>"), "placemark"],
    ["points.gpx", bytesOf("<gpx><wpt lat='1' lon='2'/></gpx>"), "waypoint"],
    ["no ending", bytesOf(' {"type":"Point","coordinates":[1,2]}'), "feature"],
  ])("%s is known for what it is", async (name, bytes, lineWord) => {
    expect(await readTable(name, bytes)).toMatchObject({ ok: true, value: { name, lineWord } });
  });

  test("a Japanese address list comes in once its encoding is named", async () => {
    const unnamed = await readTable("nara.csv", fixture("nara-shift-jis.csv"));
    expect(unnamed).toMatchObject({ ok: true, value: { notes: [expect.stringContaining("windows-1252")] } });
    const table = await readTable("nara.csv", fixture("nara-shift-jis.csv"), { encoding: "shift_jis" });
    if (!table.ok) throw new Error(table.fault.what);
    const plan = planImport(bareRoute(), {
      kind: "livingUnit",
      table: table.value,
      onBad: "refuse",
      onExisting: "skip",
    });
    expect(plan).toMatchObject({ ok: true, value: { addedCount: 5, columns: { lat: "緯度", lon: "経度" } } });
  });

  test("KML in the encoding it declares is read in it", async () => {
    const text = bytesOf("<?xml version='1.0' encoding='Shift_JIS'?><kml><Placemark><name>");
    const bytes = Uint8Array.from([...text, 0x93, 0x64, 0x92, 0x8c, ...bytesOf("</name></Placemark></kml>")]);
    expect(await readTable("a.kml", bytes)).toMatchObject({ ok: true, value: { rows: [{ cells: ["", "", "電柱"] }] } });
  });

  test.each([
    ["KML that is none", "poles.kml", bytesOf("tag,lon"), "not-xml"],
    ["KML cut off", "poles.kml", bytesOf("<kml><Placemark>"), "not-xml"],
  ])("%s is refused at its line", async (_, name, bytes, code) => {
    expect(await readTable(name, bytes)).toMatchObject({ ok: false, fault: { code, where: `${name}, line 1` } });
  });

  test.each([
    ["an XML file", "map.osm", bytesOf('<?xml version="1.0"?><osm/>'), "not-table"],
    ["an old workbook", "old.xls", Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1]), "old-workbook"],
    ["a picture", "p.png", Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0]), "not-text"],
    ["nothing", "empty.csv", new Uint8Array(), "empty-table"],
    ["a file past the limit", "big.csv", new Uint8Array(largestFileBytes + 1), "too-large"],
  ])("%s is refused with a reason", async (_, name, bytes, code) => {
    expect(await readTable(name, bytes)).toMatchObject({ ok: false, fault: { code, where: name } });
  });
});
