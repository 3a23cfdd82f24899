import { readFile } from "node:fs/promises";
import { type MachineChoices, machineChoices, usualChoices } from "../../core/contract/machineMethods.ts";
import type { Call } from "./serve.ts";

/** Reads the window's page and dresses it as the person at this machine chose. */
export async function readDressedPage(path: string, call: Call): Promise<string> {
  const [html, answer] = await Promise.all([readFile(path, "utf8"), call("machine.read", {})]);
  const choices = machineChoices.safeParse(answer.ok ? answer.value : null);
  return dressedPage(html, choices.success ? choices.data : usualChoices);
}

/** The page with the colours and size of words a person chose, so that it never shows others first. */
function dressedPage(html: string, { theme, textPercent }: MachineChoices): string {
  const contrast = theme === "contrast" ? ' data-contrast="more"' : "";
  return html.replace("<html ", `<html data-theme="${theme}"${contrast} style="font-size: ${textPercent}%" `);
}
