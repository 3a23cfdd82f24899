import { spanName } from "../../plant/names.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Finding } from "../../rules/finding.ts";
import type { Subject } from "../../rules/rule.ts";
import type { Alike, NumberedFinding } from "../book.ts";
import { placeWords } from "../sourceWords.ts";

/** As many findings that say the same of different things share a number. */
const fewestAlike = 6;
/** Notes that say the same of more things than this are listed, not marked on the plans: they would stand at every pole. */
const mostNotesMarked = 20;

/** Findings nobody waived, numbered as they are listed, worst first; many that say the same share a number. */
export function numberOpen(plant: Plant, findings: readonly Finding[]): readonly NumberedFinding[] {
  const groups = new Map<string, { finding: Finding; named: Named | null }[]>();
  for (const finding of findings) {
    if (finding.waiverId !== null) continue;
    const named = nameIn(plant, finding);
    const key = named ? alikeKey(finding, named.shape) : finding.key;
    const group = groups.get(key);
    if (group) group.push({ finding, named });
    else groups.set(key, [{ finding, named }]);
  }
  const listed = [...groups.values()].flatMap((group) =>
    group.length >= fewestAlike && group[0]?.named ? [group] : group.map((one) => [one]),
  );
  return listed.flatMap((group, index) =>
    group.map(({ finding, named }) => ({
      number: index + 1,
      finding,
      alike: named && group.length > 1 ? { ...named, count: group.length } : null,
    })),
  );
}

/** True where a plan marks a finding at its place. */
export function isMarked({ finding, alike }: NumberedFinding): boolean {
  return finding.severity !== "note" || alike === null || alike.count <= mostNotesMarked;
}

/** What a finding is about, and its message with three points in place of the name. */
type Named = Omit<Alike, "count">;

function alikeKey({ ruleId, severity, limit, unit, basis }: Finding, shape: string): string {
  return JSON.stringify([ruleId, severity, shape, limit, unit, placeWords(basis), basis.mark]);
}

function nameIn(plant: Plant, { subjects, message }: Finding): Named | null {
  for (const subject of subjects) {
    const name = bareName(plant, subject);
    const at = name === null ? -1 : ` ${message}`.indexOf(` ${name}`);
    if (name === null || at < 0 || /[\p{L}\p{N}]/u.test(message.charAt(at + name.length))) continue;
    return { name, shape: `${message.slice(0, at)}…${message.slice(at + name.length)}` };
  }
  return null;
}

/** A row's name without its kind; null where messages do not name it so. */
function bareName(plant: Plant, { table, id }: Subject): string | null {
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "pole":
      return plant.rowOf(table, id).tag || null;
    case "span":
      return spanName(plant, id);
    case "livingUnit":
      return plant.rowOf(table, id).address || null;
    case "terminal":
    case "closure":
    case "cable":
      return plant.rowOf(table, id).name || null;
    default:
      return null;
  }
}
