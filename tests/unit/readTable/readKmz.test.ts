import { strFromU8, strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { readTable } from "../../../electron/host/readTable/readTable.ts";
import { unpackKmz } from "../../../electron/host/readTable/unpackKmz.ts";

const kml = (name: string): Uint8Array =>
  strToU8(`<kml><Placemark><name>${name}</name><Point><coordinates>1,2</coordinates></Point></Placemark></kml>`);
const picture = new Uint8Array(100_000).map((_, at) => (at * at) % 251);

describe("KMZ", () => {
  test("the KML at the root of the archive is read, whatever lies before it", async () => {
    const bytes = zipSync({ "files/legend.kml": kml("legend"), "files/pole.png": picture, "doc.kml": kml("P-1") });
    for (const name of ["poles.kmz", "poles.zip"])
      expect(await readTable(name, bytes)).toMatchObject({
        ok: true,
        value: { name, lineWord: "placemark", rows: [{ cells: ["1", "2", "P-1"] }] },
      });
  });

  test("KML in a folder is read where there is none at the root, stored or packed", async () => {
    const bytes = zipSync({ "poles/a.kml": [kml("P-1"), { level: 0 }] });
    expect(await readTable("poles.kmz", bytes)).toMatchObject({
      ok: true,
      value: { rows: [{ cells: ["1", "2", "P-1"] }] },
    });
  });

  test.each([
    ["without KML", zipSync({ "a.png": picture })],
    ["cut off", zipSync({ "doc.kml": kml("P-1"), "a.png": picture }).slice(0, 300)],
    ["of nothing but its first letters", Uint8Array.from([0x50, 0x4b, 3, 4])],
  ])("an archive %s is refused with a reason", async (_, bytes) => {
    expect(await readTable("a.kmz", bytes)).toMatchObject({ ok: false, fault: { code: "not-kmz", where: "a.kmz" } });
  });

  test("an archive in which one figure was turned on its way is refused, not read with that figure", async () => {
    const bytes = zipSync({ "doc.kml": [kml("P-1"), { level: 0 }] });
    const hurt = Uint8Array.from(bytes, (byte, at) =>
      strFromU8(bytes.subarray(at - 2, at + 1), true) === "P-1" ? 0x37 : byte,
    );
    expect(hurt).not.toEqual(bytes);
    expect(await readTable("a.kmz", bytes)).toMatchObject({ ok: true });
    expect(await readTable("a.kmz", hurt)).toMatchObject({ ok: false, fault: { code: "not-kmz", where: "a.kmz" } });
  });

  test("a small archive that unpacks to more than can be read is refused while it is unpacked", () => {
    const bytes = zipSync({ "doc.kml": new Uint8Array(2_000_000).fill(32) });
    expect(bytes.length).toBeLessThan(10_000);
    expect(unpackKmz("a.kmz", bytes, "doc.kml", 1_000_000)).toMatchObject({ ok: false, fault: { code: "too-large" } });
    expect(unpackKmz("a.kmz", bytes, "doc.kml", 3_000_000).ok).toBe(true);
  });
});
