import { expect, test } from "vitest";
import { countedKinds } from "../../../core/edits/countedKinds.ts";
import { findCommand } from "../../../core/edits/register.ts";
import { granted, refusal } from "../../fixtures/layout/asking.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const terminals = { rows: [1, 2].map((n) => ({ table: "terminal", id: `terminal-${n}` })) };

test("several rows go as one edit with what hangs on all of them", () => {
  const route = granted(smallRoute(), "rows.remove", terminals);
  expect([route.terminal.size, route.splitter.size, route.slack.size, route.drop.size]).toEqual([0, 0, 0, 0]);
  expect(route.pole.size).toBe(4);
});

test("the step is named by what was chosen, counted by kind", () => {
  const asked = findCommand("rows.remove")?.ask(smallRoute(), terminals);
  expect(asked).toMatchObject({ ok: true, value: { label: "Remove 2 terminals" } });
  expect(countedKinds([{ table: "slack" }, { table: "pole" }, { table: "livingUnit" }, { table: "pole" }])).toBe(
    "2 poles, 1 coil, 1 living unit",
  );
});

test("where one of the rows is gone, none is taken away", () => {
  const rows = [...terminals.rows, { table: "pole", id: "nowhere" }];
  expect(refusal(smallRoute(), "rows.remove", { rows })).toMatchObject({ code: "missing-row" });
});
