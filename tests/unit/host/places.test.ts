import { expect, test } from "vitest";
import { folderOfCaller } from "../../../electron/host/places.ts";

test("a path is meant from the folder npm was called in, not from the program's", () => {
  const environment = { npm_lifecycle_event: "start", INIT_CWD: "/home/jo/routes" };
  expect(folderOfCaller(environment, "start")).toBe("/home/jo/routes");
});

test("run without npm, or as part of another npm script, a path is meant from where the process stands", () => {
  expect(folderOfCaller({}, "start")).toBe(process.cwd());
  expect(folderOfCaller({ npm_lifecycle_event: "test", INIT_CWD: "/home/jo" }, "start")).toBe(process.cwd());
});
