import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { commandRegister, findCommand } from "../../../core/edits/register.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoutes } from "../../fixtures/route/faultyRoutes.ts";

const folder = new URL("../../../core/edits/commands/", import.meta.url);

function fileNameOf(commandId: string): string {
  return `${commandId.replace(/\.(\w)/g, (_, letter: string) => letter.toUpperCase())}.ts`;
}

test("every file of the commands folder is in the register, under the name its id gives it", () => {
  const files = readdirSync(folder);
  expect(files.length).toBeGreaterThan(30);
  expect(commandRegister.map((one) => fileNameOf(one.id)).sort()).toEqual(files.sort());
});

test("no two commands share an id, and each is found by its own", () => {
  expect(new Set(commandRegister.map((one) => one.id)).size).toBe(commandRegister.length);
  for (const command of commandRegister) expect(findCommand(command.id)).toBe(command);
  expect(findCommand("terminal.paint")).toBeUndefined();
});

describe("a fix a rule offers can be carried out and takes its finding away", () => {
  test.each(Object.keys(faultyRoutes))("%s", (ruleId) => {
    const route = faultyRoutes[ruleId]?.();
    if (!route) throw new Error("no such faulty route");
    for (const finding of findingsOf(route, ruleId)) {
      for (const fix of finding.fixes) {
        const asked = findCommand(fix.command)?.ask(route, fix.input);
        expect(asked, fix.label).toMatchObject({ ok: true });
        if (!asked?.ok) continue;
        const mended = applyChange(route, asked.value);
        expect(mended, fix.label).toMatchObject({ ok: true });
        if (mended.ok) expect(findingsOf(mended.value, ruleId).map((one) => one.key)).not.toContain(finding.key);
      }
    }
  });
});
