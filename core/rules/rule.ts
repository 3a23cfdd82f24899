import type { TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** Where a limit comes from; printed with every finding that leans on it. */
export type Basis = {
  readonly document: string;
  readonly clause: string;
  readonly edition: string;
  readonly mark: "seen" | "memory" | "practice" | "computed";
};

/** error: the route cannot be built or run so; warning: someone must decide; note: worth knowing. */
export type Severity = "error" | "warning" | "note";

/** A row a finding is about. */
export type Subject = { readonly table: TableName; readonly id: string };

/** An edit that would mend a finding: a command's id and input, so that it crosses workers and windows as data. */
export type Fix = { readonly label: string; readonly command: string; readonly input: unknown };

/** What a rule found wrong with one row. */
export type Hit = {
  /** The row asked about first, then the others it quarrels with. */
  readonly subjects: readonly Subject[];
  /** One sentence for a person, naming things by their tags. */
  readonly message: string;
  /** The figure compared, SI, and the limit it was compared with; null where the rule compares no figures. */
  readonly measured: number | null;
  readonly limit: number | null;
  /** SI unit of both figures: "m", "N", "dB", "" for counts. */
  readonly unit: string;
  readonly fixes: readonly Fix[];
  /** Set where the limit's own row tells its source; else the rule's basis holds. */
  readonly basis?: Basis;
};

/**
 * One thing that can be wrong with a route. A rule is asked about one row at a time and reads through the plant, so
 * that after an edit only the rows that leaned on it are asked again. Rules do not know each other and change
 * nothing.
 */
export type Rule = {
  readonly id: string;
  readonly title: string;
  /** One sentence: what is held against what. The rule book prints it. */
  readonly compares: string;
  readonly severity: Severity;
  readonly basis: Basis;
  /** The table whose rows this rule is asked about. */
  readonly each: TableName;
  readonly check: (plant: Plant, id: string) => Iterable<Hit>;
};

/** Basis of a limit that is the company's own setting. */
export function companySetting(column: string): Basis {
  return { document: "company setting", clause: column, edition: "", mark: "practice" };
}

/** Whether a basis only says that a limit is a standard of the company; its clause is the column. */
export function isCompanySetting(basis: Basis): boolean {
  return basis.document === "company setting";
}

/** Whether nobody has read the figure in its document: it is told as unverified wherever it is leaned on. */
export function isUnverified(basis: Basis): boolean {
  return basis.mark === "memory";
}

/** Basis of a figure read from a catalogue row. */
export function catalogueBasis(row: {
  readonly basisDocument: string;
  readonly basisClause: string;
  readonly basisEdition: string;
  readonly basisMark: Basis["mark"];
}): Basis {
  return { document: row.basisDocument, clause: row.basisClause, edition: row.basisEdition, mark: row.basisMark };
}

/** Basis of a rule that needs no source: the rows contradict each other. */
export const routeItself: Basis = { document: "the route itself", clause: "", edition: "", mark: "computed" };

/** Basis of a limit that is trade habit. */
export function tradePractice(clause: string): Basis {
  return { document: "trade practice", clause, edition: "", mark: "practice" };
}
