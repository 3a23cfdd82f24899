import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nativeBindingPath, openHandle } from "../../../db/driver.ts";
import { inScratch, withFile } from "../../contract/db/scratch.ts";
import { smallRoute } from "../../contract/db/smallRoute.ts";

test("Electron has a native copy of its own by its binary interface, Node uses the package's", () => {
  const electron = { electron: "42.0.0", modules: "146" };
  expect(nativeBindingPath("native", electron, "linux", "x64")).toBe(
    join("native", "electron-146-linux-x64", "better_sqlite3.node"),
  );
  expect(nativeBindingPath("native", { modules: "115" }, "linux", "x64")).toBeNull();
});

test("a native copy that is missing or broken is a fault that says what to run", () => {
  inScratch((path, folder) => {
    const binding = join(folder, "better_sqlite3.node");
    expect(openHandle(path, false, binding)).toMatchObject({ fault: { code: "bad-binding", where: binding } });
    writeFileSync(binding, "not a library");
    const refused = openHandle(path, false, binding);
    expect(refused).toMatchObject({ fault: { code: "bad-binding", mend: expect.stringContaining("npm start") } });
  });
});

test("what would write cannot be sent as a question", () => {
  withFile(smallRoute(), ({ db }) => {
    expect(() => db.all("DELETE FROM span RETURNING id")).toThrow("writes");
    expect(db.all("SELECT id FROM span")).toEqual([{ id: "span-1" }]);
  });
});
