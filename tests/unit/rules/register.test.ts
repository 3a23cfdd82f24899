import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ownRules, ruleRegister } from "../../../core/rules/register.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, faultyRoutes } from "../../fixtures/route/faultyRoutes.ts";

const folder = new URL("../../../core/rules/", import.meta.url);
const ruleFiles = readdirSync(folder).filter((name) => /: Rule = \{/.test(readFileSync(new URL(name, folder), "utf8")));

describe("the register of rules", () => {
  it("is the folder: every file with a rule is in it, and every rule of its own in it has its file", () => {
    expect(ruleFiles.length).toBeGreaterThan(25);
    const asFiles = ownRules.map(
      (rule) => `${rule.id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())}.ts`,
    );
    expect([...asFiles].sort()).toEqual([...ruleFiles].sort());
  });

  it("gives every rule an id and a title of its own", () => {
    expect(new Set(ruleRegister.map((rule) => rule.id)).size).toBe(ruleRegister.length);
    expect(new Set(ruleRegister.map((rule) => rule.title)).size).toBe(ruleRegister.length);
    for (const rule of ruleRegister) expect(rule.id).toMatch(/^[a-z]+(-[a-z]+)+$/);
  });

  it.each(ruleRegister.map((rule) => [rule.id, rule.compares] as const))(
    "says in one sentence what %s holds against what",
    (_, compares) => {
      expect(compares).toMatch(/^[A-Z][^.]*(\.\d[^.]*)*[a-z%]\.$/);
      expect(compares).toMatch(/\bagainst\b|\bHow a span came to be\b/);
      expect(ruleRegister.filter((rule) => rule.compares === compares)).toHaveLength(1);
    },
  );

  it.each(ruleFiles)("%s has a test that fires and one that stays quiet", (file) => {
    const test = new URL(file.replace(/\.ts$/, ".test.ts"), import.meta.url);
    expect(existsSync(test)).toBe(true);
    const text = readFileSync(test, "utf8");
    const titles = [...text.matchAll(/\bit\("([^"]*)"/g)].map((match) => match[1] ?? "");
    expect(titles.filter((title) => /\b(is|are) found\b/.test(title))).not.toEqual([]);
    expect(titles.filter((title) => /\b(is|are) quiet$/.test(title))).not.toEqual([]);
  });

  it("finds nothing wrong with the small route, under every rule", () => {
    expect(findingsOf(smallRoute()).map((one) => `${one.ruleId}: ${one.message}`)).toEqual([]);
  });

  it("has a faulty route for every rule", () => {
    expect(Object.keys(faultyRoutes).sort()).toEqual(ruleRegister.map((rule) => rule.id).sort());
  });

  it.each(ruleRegister.map((rule) => rule.id))("names people's tags and not ids in what %s says", (ruleId) => {
    const findings = findingsOf(faultyRoute(ruleId), ruleId);
    expect(findings).not.toEqual([]);
    for (const one of findings) {
      expect(one.message).not.toMatch(/\b(pole|span|terminal|cable|coil|unit|drop|use|splitter|closure)-\d/);
      expect(one.message).toMatch(/^[A-Z0-9].*[.]$/);
    }
  });
});
