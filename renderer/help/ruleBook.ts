import type { TableName } from "../../core/model/tables.ts";
import { ruleRegister } from "../../core/rules/register.ts";
import type { Basis, Rule, Severity } from "../../core/rules/rule.ts";
import { markWords, standardWords } from "../settings/words.ts";
import { eachWords, severityWords, words } from "./words.ts";

/** A rule as the book prints it. */
export type BookRule = {
  readonly id: string;
  readonly title: string;
  readonly severity: Severity;
  readonly compares: string;
  readonly means: string;
  readonly looksAt: string;
  readonly limitFrom: string;
  readonly mark: string;
};

const rank = { error: 0, warning: 1, note: 2 } as const;

/** Every rule of the program, worst first. */
export function ruleBook(): readonly BookRule[] {
  return [...ruleRegister].sort((a, b) => rank[a.severity] - rank[b.severity]).map(inWords);
}

function inWords({ id, title, compares, severity, each, basis }: Rule): BookRule {
  return {
    id,
    title,
    severity,
    compares,
    means: severityWords[severity],
    looksAt: words.looksAt(nameOfTable(each)),
    limitFrom: limitWords(basis),
    mark: markWords[basis.mark],
  };
}

function limitWords({ document, clause, edition }: Basis): string {
  const standard = Object.entries(standardWords).find(([column]) => column === clause)?.[1];
  if (standard) return words.setting(...standard);
  return [document, clause, edition].filter((part) => part !== "").join(", ");
}

function nameOfTable(table: TableName): string {
  return eachWords[table] ?? table.replace(/([A-Z])/g, " $1").toLowerCase();
}
