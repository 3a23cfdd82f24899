import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../electron/batch/verb.ts";
import { verbs } from "../../electron/batch/verbs.ts";
import { readLogo } from "../../electron/host/companyLogo.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { openPainter } from "../../electron/host/painter.ts";

const folder = mkdtempSync(join(tmpdir(), "strand-standards-"));
const at = (name: string) => join(folder, name);
const file = at("town.strand");
const desk: Desk = {
  stamp: { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" },
  assetsFolder: join(import.meta.dirname, "../../assets"),
  windowFolder: folder,
  runJob: runJobHere,
  readInput: async () => "",
  say: () => {},
};
const run = async (...line: readonly string[]) => {
  const verb = verbs.find((one) => one.name === line[0]);
  if (!verb) throw new Error(`no verb ${line[0]}`);
  return verb.run(line.slice(1), desk);
};

const svg =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 1"><path d="M0 0h4v1H0z" fill="#048" fill-opacity=".5"/></svg>';
/** Sixteen red points by four. */
const jpeg = Buffer.from(
  "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABQODxIPDRQSEBIXFRQYHjIhHhwcHj0sLiQySUBMS0dARkVQWnNiUFVtVkVGZIhlbXd7gYKBTmCNl4x9lnN+gXz/2wBDARUXFx4aHjshITt8U0ZTfHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHz/wAARCAAEABADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAX/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFQEBAQAAAAAAAAAAAAAAAAAABQb/xAAUEQEAAAAAAAAAAAAAAAAAAAAA/9oADAMBAAIRAxEAPwCUAPWD/9k=",
  "base64",
);

beforeAll(async () => {
  writeFileSync(at("logo.svg"), svg);
  const made = await run("new", file, "--name", "Test town");
  if (!made.ok) throw new Error(made.fault.what);
});
afterAll(() => rmSync(folder, { recursive: true }));

test("PNG, JPEG and SVG are taken for a logo; what cannot be painted is not, whatever its head says", async () => {
  const png = (await openPainter()).png(svg.replace("viewBox", 'width="40" height="10" viewBox'), 96);
  expect(await readLogo("a.png", png)).toMatchObject({ value: { kind: "png", widthPx: 40, heightPx: 10 } });
  expect(await readLogo("a.jpg", jpeg)).toMatchObject({ value: { kind: "jpeg", widthPx: 16, heightPx: 4 } });
  expect(await readLogo("a.svg", Buffer.from(svg))).toMatchObject({ value: { kind: "svg" } });
  const broken = [png.slice(0, 40), Buffer.from(svg.replace("</svg>", "")), Buffer.from(svg.replace(/<path.*\/>/, ""))];
  for (const bytes of broken) expect(await readLogo("a", bytes)).toMatchObject({ fault: { code: "not-a-picture" } });
});

test("standards are set by name, printed, and refused where they cannot be", async () => {
  expect(await run("standards", file, "--set", "newLineMm=0.7", "--set", "dropReachM=50")).toMatchObject({ ok: true });
  expect(await run("standards", file)).toMatchObject({
    value: {
      lines: expect.arrayContaining(["newLineMm=0.7", "dropReachM=50"]),
      json: { standards: { dropReachM: 50 } },
    },
  });
  for (const bad of ["newLineMm=9", "layerNames=strand=a b", "nothing=1"])
    expect(await run("standards", file, "--set", bad)).toMatchObject({ ok: false });
  expect(await run("standards", file, "--set", "paper")).toMatchObject({ fault: { code: "bad-arguments" } });
  expect(await run("standards", file, "--no-logo", "--take", "x.json")).toMatchObject({
    fault: { code: "bad-arguments" },
  });
});

test("a logo is drawn in every format, and goes with standards and catalogues by a template into a new route", async () => {
  expect(await run("standards", file, "--logo", at("logo.svg"), "--save", at("own.json"))).toMatchObject({ ok: true });
  const other = at("other.strand");
  expect(await run("new", other, "--name", "Other town", "--template", at("own.json"))).toMatchObject({ ok: true });
  for (const path of [file, other]) {
    expect(await run("draw", path, "--sheets", "1", "--out", at("one.pdf"))).toMatchObject({ ok: true });
    // the picture and what it lets through
    expect(readFileSync(at("one.pdf"), "latin1").match(/\/Subtype \/Image/g)).toHaveLength(2);
    expect(await run("draw", path, "--sheets", "1", "--svg", folder)).toMatchObject({ ok: true });
    expect(readFileSync(at("001-cover.svg"), "utf8")).toContain(Buffer.from(svg).toString("base64"));
  }
  const read = await run("standards", other);
  expect(read).toMatchObject({ value: { json: { standards: { routeName: "Other town", newLineMm: "0.7" } } } });
  expect(await run("standards", other, "--no-logo")).toMatchObject({ ok: true });
  expect(await run("draw", other, "--sheets", "1", "--out", at("none.pdf"))).toMatchObject({ ok: true });
  expect(readFileSync(at("none.pdf"), "latin1")).not.toContain("/Subtype /Image");
});

test("a template whose logo is another picture than its standards name is refused, and no route is made of it", async () => {
  const template: unknown = JSON.parse(readFileSync(at("own.json"), "utf8"));
  const changed = { ...Object(template), logoBase64: jpeg.toString("base64") };
  writeFileSync(at("changed.json"), JSON.stringify(changed));
  const made = await run("new", at("third.strand"), "--template", at("changed.json"));
  expect(made).toMatchObject({ fault: { code: "bad-template" } });
  expect(await run("standards", file, "--take", at("changed.json"))).toMatchObject({ fault: { code: "bad-template" } });
  expect(await run("check", at("third.strand"))).toMatchObject({ ok: false });
});
