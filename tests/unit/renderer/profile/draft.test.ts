import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { profileSpan } from "../../../../core/plant/profileSpan.ts";
import { openDraft } from "../../../../renderer/profile/draft.ts";
import { changed, smallRoute } from "../../../fixtures/route/buildRoute.ts";

test("a draft tells what the route would after the edit, step by step, and leaves the route as it is", () => {
  const route = smallRoute();
  const draft = openDraft(route, "strand-2");
  for (const heightM of [6, 5.5, 7]) {
    expect(draft.hang(heightM)).toBe(true);
    const edited = openPlant(changed(route, "attachment", "strand-2", { heightM }));
    expect(profileSpan(draft.plant, "span-2")).toEqual(profileSpan(edited, "span-2"));
  }
  expect(route.attachment.get("strand-2")?.heightM).toBe(6.3);
});

test("a draft refuses a height that no attachment has", () => {
  expect(openDraft(smallRoute(), "strand-2").hang(-1)).toBe(false);
  expect(openDraft(smallRoute(), "nobody's").hang(5)).toBe(false);
});
