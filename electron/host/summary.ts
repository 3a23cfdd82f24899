import { portCounts } from "../../core/plant/terminalView.ts";
import type { Finding } from "../../core/rules/finding.ts";
import { findingFigures } from "../../core/rules/findingFigures.ts";
import type { Severity } from "../../core/rules/rule.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import type { Session } from "./session.ts";

export type SeverityCounts = Readonly<Record<Severity, number>> & { readonly waived: number };

/** Findings that still stand, by severity, and how many were waived. */
export function countBySeverity(findings: readonly Finding[]): SeverityCounts {
  const standing = findings.filter((one) => one.waiverId === null);
  const count = (severity: Severity): number => standing.filter((one) => one.severity === severity).length;
  return {
    error: count("error"),
    warning: count("warning"),
    note: count("note"),
    waived: findings.length - standing.length,
  };
}

/** A finding on one line. */
export function findingLine(finding: Finding, system: UnitSystem): string {
  const figures = findingFigures(finding, system);
  const waived = finding.waiverId === null ? "" : " (waived)";
  return [`${finding.severity.padEnd(7)} ${finding.ruleId}: ${finding.message}${waived}`, ...figures].join(" ");
}

/** What a route holds, counted. */
export type Summary = {
  readonly routeName: string;
  readonly poles: number;
  readonly livingUnits: number;
  readonly terminals: number;
  readonly portsUsed: number;
  readonly portsSpare: number;
  readonly findings: SeverityCounts;
};

/** Counts a route's poles, terminals, ports and findings. */
export function summaryOf(session: Session): Summary {
  const route = session.route();
  const ports = [...route.terminal.keys()].map((id) => portCounts(session.plant, id));
  return {
    routeName: session.plant.settings().routeName,
    poles: route.pole.size,
    livingUnits: route.livingUnit.size,
    terminals: route.terminal.size,
    portsUsed: ports.reduce((sum, one) => sum + one.used, 0),
    portsSpare: ports.reduce((sum, one) => sum + one.spare, 0),
    findings: countBySeverity(session.findings()),
  };
}

/** A summary as lines of words. */
export function summaryLines(summary: Summary): string[] {
  const { error, warning, note, waived } = summary.findings;
  return [
    `${summary.routeName}: ${summary.poles} poles, ${summary.livingUnits} living units`,
    `Terminals: ${summary.terminals}; ports used ${summary.portsUsed}, spare ${summary.portsSpare}`,
    `Findings: ${error} errors, ${warning} warnings, ${note} notes, ${waived} waived`,
  ];
}
