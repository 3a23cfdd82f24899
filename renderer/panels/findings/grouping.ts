import type { Plant } from "../../../core/plant/plant.ts";
import { findingFigures } from "../../../core/rules/findingFigures.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { drawnRef } from "../../app/look.ts";
import { refKey } from "../../app/ref.ts";
import type { WindowFinding } from "../../app/routeStore.ts";
import { titleOf } from "../words.ts";
import { findingsWords } from "./words.ts";

export const groupings = ["severity", "rule", "place", "nothing"] as const;
export type Grouping = (typeof groupings)[number];

export type FindingGroup = {
  readonly key: string;
  readonly title: string;
  readonly findings: readonly WindowFinding[];
};

/** Findings in groups, in the order they are given in; a group stands where its first one does. */
export function grouped(plant: Plant, findings: readonly WindowFinding[], by: Grouping): readonly FindingGroup[] {
  const groups = new Map<string, WindowFinding[]>();
  const titles = new Map<string, string>();
  for (const finding of findings) {
    const [key, title] = groupOf(plant, finding, by);
    titles.set(key, title);
    const group = groups.get(key);
    if (group) group.push(finding);
    else groups.set(key, [finding]);
  }
  return [...groups].map(([key, list]) => ({ key, title: titles.get(key) ?? key, findings: list }));
}

/** Whether every word of the text is in what a finding says. */
export function saysAll(finding: WindowFinding, text: string, units: UnitSystem): boolean {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return true;
  const { title, message, severity, basis } = finding;
  const said = [title, message, severity, basis.document, basis.clause, ...findingFigures(finding, units)];
  const all = said.join(" ").toLowerCase();
  return words.every((word) => all.includes(word));
}

function groupOf(plant: Plant, finding: WindowFinding, by: Grouping): readonly [key: string, title: string] {
  if (by === "nothing") return ["", findingsWords.title];
  if (by === "severity") return [finding.severity, finding.severity];
  if (by === "rule") return [finding.ruleId, finding.title];
  const [drawn] = finding.subjects.flatMap((one) => drawnRef(plant, refKey(one.table, one.id)) ?? []);
  return drawn ? [drawn, titleOf(plant, drawn)] : ["", findingsWords.nowhere];
}
