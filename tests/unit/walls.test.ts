import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { expect, test } from "vitest";

const projectFolder = resolve(import.meta.dirname, "../..");

/** Room by room, the rooms and packages it may import; its own files always. A trailing * admits all of a layer. */
const walls: Readonly<Record<string, readonly string[]>> = {
  "core/units": [],
  "core/geodesy": ["core/units", "geographiclib-geodesic", "proj4"],
  "core/strand": ["core/units"],
  "core/placement": [],
  "core/fiber": ["core/units"],
  "core/assignment": [],
  "core/closeout": ["core/units", "core/model", "core/plant", "core/fiber", "core/traces", "zod", "@noble/hashes"],
  "core/traces": ["core/model"],
  "core/model": ["core/units", "zod"],
  "core/edits": ["core/units", "core/model", "core/plant", "core/layout", "core/closeout", "core/rules", "zod"],
  "core/plant": ["core/units", "core/model", "core/geodesy", "core/strand", "core/fiber"],
  "core/layout": ["core/units", "core/model", "core/plant", "core/fiber", "core/placement", "core/assignment"],
  "core/jointpole": ["core/units", "core/model", "core/plant"],
  "core/rules": [
    "core/units",
    "core/model",
    "core/strand",
    "core/fiber",
    "core/plant",
    "core/jointpole",
    "core/closeout",
  ],
  "core/explain": ["core/units", "core/model", "core/plant", "core/jointpole", "core/rules"],
  "core/sheets": [
    "core/units",
    "core/model",
    "core/plant",
    "core/rules",
    "core/explain",
    "core/jointpole",
    "core/strand",
    "core/fiber",
    "core/closeout",
  ],
  "core/dxf": ["core/units", "core/model", "core/plant", "core/sheets"],
  "core/exchange": [
    "core/units",
    "core/model",
    "core/geodesy",
    "core/fiber",
    "core/edits",
    "core/plant",
    "core/sheets",
    "core/closeout",
    "zod",
    "papaparse",
    "saxen",
  ],
  "core/calc": [
    "core/units",
    "core/geodesy",
    "core/strand",
    "core/fiber",
    "core/assignment",
    "core/jointpole",
    "core/placement",
    "core/traces",
    "core/closeout",
    "zod",
  ],
  "core/contract": [
    "core/units",
    "core/model",
    "core/edits",
    "core/rules",
    "core/sheets",
    "core/exchange",
    "core/closeout",
    "zod",
  ],
  db: ["core/*", "better-sqlite3", "zod", "node:*"],
  "electron/host": [
    "core/*",
    "db",
    "assets/demo",
    "zod",
    "node:*",
    "pdfkit",
    "@resvg/resvg-wasm",
    "read-excel-file",
    "write-excel-file",
    "fflate",
  ],
  "electron/batch": ["core/*", "electron/host", "electron/loopback", "node:*"],
  "electron/loopback": ["core/*", "electron/host", "node:*"],
  "electron/desktop": ["core/*", "electron/host", "electron", "node:*"],
  "assets/demo": ["core/units", "core/geodesy"],
  renderer: [
    "core/*",
    "zod",
    "react",
    "react-dom",
    "konva",
    "react-konva",
    "zustand",
    "@tanstack/react-virtual",
    "radix-ui",
    "lucide-react",
    "flatbush",
    "@fontsource/inter",
    "@fontsource/barlow-condensed",
    "@fontsource/ibm-plex-sans-condensed",
    "vite",
    "@vitejs/plugin-react",
  ],
};

type Import = { readonly file: string; readonly target: string };

function sourceFiles(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return sourceFiles(path);
    return /\.tsx?$/.test(name) && !name.endsWith(".d.ts") ? [path] : [];
  });
}

/** Names the room a file stands in: the longest entry of the table that begins its path. */
function roomOf(file: string): string | undefined {
  const path = relative(projectFolder, file).replaceAll("\\", "/");
  return Object.keys(walls)
    .filter((room) => path.startsWith(`${room}/`))
    .sort((a, b) => b.length - a.length)[0];
}

/** What the file imports, types and side effects included: a room for relative paths, a package or node: name otherwise. */
function importsOf(file: string, text: string): Import[] {
  const found = text.matchAll(
    /(?:^|\n)\s*(?:import|export)\s[\w*{}\s,$]*?from\s*"([^"]+)"|(?:^|\n)\s*import\s*"([^"]+)"|\bimport\(\s*"([^"]+)"\s*\)/g,
  );
  return [...found].map((match) => {
    const name = match[1] ?? match[2] ?? match[3] ?? "";
    if (name.startsWith(".")) {
      const target = resolve(dirname(file), name);
      return { file, target: roomOf(target) ?? relative(projectFolder, target) };
    }
    if (name.startsWith("node:")) return { file, target: "node:*" };
    return {
      file,
      target: name
        .split("/")
        .slice(0, name.startsWith("@") ? 2 : 1)
        .join("/"),
    };
  });
}

function trespasses(imports: readonly Import[]): string[] {
  return imports.flatMap(({ file, target }) => {
    const room = roomOf(file);
    if (room === undefined) return [`${relative(projectFolder, file)} stands in no room`];
    const allowed = walls[room] ?? [];
    const may =
      target === room || allowed.includes(target) || (target.startsWith("core/") && allowed.includes("core/*"));
    return may ? [] : [`${relative(projectFolder, file)} may not import ${target}`];
  });
}

const files = ["core", "db", "electron", "renderer", "assets"].flatMap((layer) =>
  sourceFiles(join(projectFolder, layer)),
);

test("no room imports what its wall keeps out", () => {
  expect(files.length).toBeGreaterThan(50);
  expect(trespasses(files.flatMap((file) => importsOf(file, readFileSync(file, "utf8"))))).toEqual([]);
});

test("a planted trespass is caught", () => {
  const file = join(projectFolder, "core/strand/planted.ts");
  const text = 'import { readFileSync } from "node:fs";\nimport type { Route } from "../model/route.ts";\n';
  expect(trespasses(importsOf(file, text))).toEqual([
    "core/strand/planted.ts may not import node:*",
    "core/strand/planted.ts may not import core/model",
  ]);
});
