import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { z } from "zod";

const root = resolve(import.meta.dirname, "../../..");
const builder = createRequire(createRequire(import.meta.url).resolve("electron-builder/package.json"));
const { validateConfiguration } = z
  .object({ validateConfiguration: z.function({ input: [z.unknown(), z.unknown()], output: z.promise(z.void()) }) })
  .parse(builder("app-builder-lib/out/util/config/config.js"));
const quiet = { isEnabled: false, add: () => {} };
const config = z
  .looseObject({ files: z.array(z.string()), npmRebuild: z.boolean() })
  .parse(JSON.parse(readFileSync(resolve(root, "electron/desktop/builder.json"), "utf8")));

test("the packager's own schema takes the configuration for Windows, macOS and Linux", async () => {
  await expect(validateConfiguration(config, quiet)).resolves.toBeUndefined();
  expect(Object.keys(config)).toEqual(expect.arrayContaining(["win", "mac", "linux", "fileAssociations"]));
});

test("the packager's own schema refuses a field it does not know", async () => {
  await expect(validateConfiguration({ ...config, npmRebuilt: false }, quiet)).rejects.toThrow(/npmRebuilt/);
});

test("packing leaves the database driver of this machine alone and opens no door past the archive", () => {
  expect(config).toMatchObject({
    npmRebuild: false,
    asar: true,
    electronFuses: { runAsNode: false, enableEmbeddedAsarIntegrityValidation: true, onlyLoadAppFromAsar: true },
  });
});
