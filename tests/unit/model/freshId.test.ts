import { expect, test } from "vitest";
import { freshIds } from "../../../core/model/freshId.ts";
import { emptyRoute } from "../../../core/model/route.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

test("ids go on after the greatest in use", () => {
  const next = freshIds(smallRoute(), "pole");
  expect([next(), next()]).toEqual(["pole-5", "pole-6"]);
});

test("an empty table starts at 1, and ids of another form do not count", () => {
  expect(freshIds(emptyRoute(), "span")()).toBe("span-1");
  expect(freshIds(smallRoute(), "livingUnit")()).toBe("livingUnit-1");
});
