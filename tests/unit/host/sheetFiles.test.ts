import { strFromU8, unzipSync } from "fflate";
import { expect, it } from "vitest";
import type { Face, Mark, Sheet } from "../../../core/sheets/paper/displayList.ts";
import { circle, words } from "../../../core/sheets/paper/marks.ts";
import { bundled } from "../../../electron/host/bundled.ts";
import { sheetFiles } from "../../../electron/host/sheetFiles.ts";

const sheetOf = (marks: readonly Mark[]): Sheet => ({
  number: "7",
  title: "Test",
  kind: "plan",
  keys: [],
  scale: "none",
  sizeMm: { width: 25.4, height: 12.7 },
  marks,
  links: [],
});
const setOf = (sheets: readonly Sheet[]) => ({ sheets, layerNames: new Map() });
const watch = { signal: new AbortController().signal, onSheet: () => {} };
const pictureOf = async (marks: readonly Mark[]) => {
  const [file] = await sheetFiles(setOf([sheetOf(marks)]), "png", watch);
  return { name: file?.name, bytes: Buffer.from(file?.content ?? "") };
};

it("paints a sheet at 200 dots per inch of its paper, the same bytes twice", async () => {
  const { name, bytes } = await pictureOf([circle("poles", "bold", [10, 6], 3)]);
  expect(name).toBe("007-plan.png");
  expect(bytes.subarray(1, 4).toString()).toBe("PNG");
  expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([200, 100]);
  expect((await pictureOf([circle("poles", "bold", [10, 6], 3)])).bytes.equals(bytes)).toBe(true);
});

it("letters every face in its own font, and signs no face has in the one for symbols", async () => {
  const faces: readonly Face[] = ["narrow", "narrowBold", "plain", "plainBold"];
  const lettered = faces.map((face) => words("Main 36", [2, 5], { face, heightMm: 4 }));
  const marks: (readonly Mark[])[] = [[], ...lettered.map((one) => [one]), [words("△", [2, 5], { heightMm: 4 })]];
  const pictures = await Promise.all(marks.map(async (one) => (await pictureOf(one)).bytes.toString("base64")));
  expect(new Set(pictures).size).toBe(pictures.length);
});

it("stops before the next sheet when asked", async () => {
  const stop = new AbortController();
  const sheets = [sheetOf([]), sheetOf([]), sheetOf([])];
  const work = sheetFiles(setOf(sheets), "png", {
    signal: stop.signal,
    onSheet: (doneCount) => doneCount === 2 && stop.abort(new Error("stopped")),
  });
  await expect(work).rejects.toThrow("stopped");
});

it("hands over one sheet as it is, several as an archive that is the same bytes twice", () => {
  const files = [
    { name: "001-cover.svg", content: "<svg/>" },
    { name: "002-plan.svg", content: "<svg></svg>" },
  ];
  expect(bundled("town", files.slice(0, 1))).toMatchObject({ fileName: "town 001-cover.svg" });
  const archive = bundled("town", files);
  expect(archive.fileName).toBe("town sheets.zip");
  const read = Object.entries(unzipSync(archive.content)).map(([name, bytes]) => ({ name, content: strFromU8(bytes) }));
  expect(read).toEqual(files);
  expect(Buffer.from(bundled("town", files).content).equals(Buffer.from(archive.content))).toBe(true);
});
