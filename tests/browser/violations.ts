import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What of a page hinders seriously who cannot see or point: rule and place. */
export async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const run = (globalThis as unknown as { axe: { run: (options: object) => Promise<AxeResult> } }).axe.run; // put on the page just above
    // what passes is not asked for: it takes most of the time
    const { violations: found } = await run({ resultTypes: ["violations"], preload: false });
    return found
      .filter((one) => one.impact === "serious" || one.impact === "critical")
      .flatMap((one) => one.nodes.map((node) => `${one.id}: ${node.target.join(" ")}`));
  });
}

type AxeResult = {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly target: readonly string[] }[];
  }[];
};
