import { cablePath } from "../plant/cablePath.ts";
import { type Point, pointOnSpan } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { terminalHang } from "../plant/terminalView.ts";
import {
  type Basis,
  catalogueBasis,
  type Hit,
  isCompanySetting,
  type Rule,
  type Severity,
  type Subject,
} from "./rule.ts";

/** A hit with everything a list, a drawing or a jump needs. */
export type Finding = Hit & {
  /** Same rule, same subjects: same key, so that a finding can be followed and waived. */
  readonly key: string;
  readonly ruleId: string;
  readonly title: string;
  readonly severity: Severity;
  readonly basis: Basis;
  /** Where on the route's grid; null for what has no place, such as a setting. */
  readonly at: Point | null;
  /** The waiver that accepts it, or null. */
  readonly waiverId: string | null;
};

/** Subjects as the text a waiver names them by. */
export function subjectsText(subjects: readonly Subject[]): string {
  return subjects
    .map((one) => one.id)
    .sort()
    .join(" ");
}

/** A rule's hit made whole. */
export function findingOf(plant: Plant, rule: Rule, hit: Hit): Finding {
  const subjects = subjectsText(hit.subjects);
  const waivers = plant.where("waiver", "subjects", subjects).map((id) => plant.rowOf("waiver", id));
  return {
    ...hit,
    key: `${rule.id} ${subjects}`,
    ruleId: rule.id,
    title: rule.title,
    severity: rule.severity,
    basis: hit.basis ?? settingBasis(plant, rule.basis),
    at: placeOf(plant, hit.subjects),
    waiverId: waivers.find((one) => one.ruleId === rule.id)?.id ?? null,
  };
}

/** Where a standard was read, where somebody told; else that it is the company's, without the name of its column. */
export function settingBasis(plant: Plant, basis: Basis): Basis {
  if (!isCompanySetting(basis)) return basis;
  const read = plant.row("settingBasis", basis.clause);
  return read ? catalogueBasis(read) : { ...basis, clause: "" };
}

function placeOf(plant: Plant, subjects: readonly Subject[]): Point | null {
  for (const subject of subjects) {
    const at = subjectPlace(plant, subject);
    if (at) return at;
  }
  const cable = subjects.find((one) => one.table === "cable");
  return cable ? cableStart(plant, cable.id) : null;
}

/** A cable has no place of its own: the pole it starts at. */
function cableStart(plant: Plant, cableId: string): Point | null {
  const poleId = cablePath(plant, cableId).steps[0]?.inPoleId;
  return poleId === undefined ? null : subjectPlace(plant, { table: "pole", id: poleId });
}

/** Where a row stands or hangs on the route's grid; null where it has no place, or is not there. */
export function subjectPlace(plant: Plant, { table, id }: Subject): Point | null {
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "pole":
    case "livingUnit": {
      const { eastM, northM } = plant.rowOf(table, id);
      return { eastM, northM };
    }
    case "terminal": {
      const { eastM, northM } = terminalHang(plant, id);
      return { eastM, northM };
    }
    case "attachment":
    case "guy":
      return subjectPlace(plant, { table: "pole", id: plant.rowOf(table, id).poleId });
    case "span":
      return pointOnSpan(plant, id, plant.rowOf("span", id).lengthM / 2);
    case "crossing":
    case "structure":
    case "groundPoint":
    case "slack":
    case "closure": {
      const row = plant.rowOf(table, id);
      return pointOnSpan(plant, row.spanId, row.offsetM);
    }
    case "wireSag":
      return subjectPlace(plant, { table: "span", id: plant.rowOf("wireSag", id).spanId });
    case "dropCrossing":
      return subjectPlace(plant, { table: "livingUnit", id: plant.rowOf("dropCrossing", id).livingUnitId });
    case "drop":
      return subjectPlace(plant, { table: "terminal", id: plant.rowOf("drop", id).terminalId });
    case "splitter":
      return subjectPlace(plant, { table: "terminal", id: plant.rowOf("splitter", id).terminalId });
    case "fiberUse": {
      const { terminalId } = plant.rowOf("fiberUse", id);
      return terminalId === null ? null : subjectPlace(plant, { table: "terminal", id: terminalId });
    }
    default:
      return null;
  }
}

const severityRank = { error: 0, warning: 1, note: 2 } as const;

/** Order of a findings list: worst first, then by rule, then by place from west to east, then by key. */
export function byWeight(a: Finding, b: Finding): number {
  return (
    severityRank[a.severity] - severityRank[b.severity] ||
    compare(a.ruleId, b.ruleId) ||
    (a.at && b.at ? a.at.eastM - b.at.eastM : 0) ||
    compare(a.key, b.key)
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
