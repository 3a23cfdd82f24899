import { findCommand } from "../../core/edits/register.ts";
import { runSteps, type Step } from "../../core/edits/runSteps.ts";
import type { Column, Given } from "./columns/column.ts";

/** A text somebody wants in a cell. */
export type CellWish = { readonly rowId: string; readonly column: Column; readonly text: string };

/** A text a cell could not take, and why; kept as it was typed. */
export type BadCell = {
  readonly rowId: string;
  readonly column: string;
  readonly text: string;
  readonly reason: string;
};

/** What a lot of wishes come to: the steps that carry out the good ones, and the bad ones with their reasons. */
export type CellPlan = {
  readonly steps: readonly Step[];
  readonly goodCount: number;
  readonly bad: readonly BadCell[];
};

/** Works out the edit that writes texts into cells. A text that a cell shows already changes nothing, and a computed cell stays. */
export function planCells(given: Given, wishes: readonly CellWish[]): CellPlan {
  const bad: BadCell[] = [];
  const tried: { readonly wish: CellWish; readonly step: Step }[] = [];
  let goodCount = 0;
  for (const wish of wishes) {
    const { rowId, column, text } = wish;
    const present = column.value(given.plant, rowId);
    if (!column.write || text.trim() === column.show(present, given)) continue;
    const reading = column.write.read(text, given, rowId);
    if (!reading.ok) bad.push(badCell(wish, reading.what));
    else if (reading.value !== present) {
      goodCount += 1;
      tried.push(...column.write.steps(given.plant, rowId, reading.value).map((step) => ({ wish, step })));
    }
  }
  const { refused } = runSteps(
    findCommand,
    given.plant.route(),
    tried.map((one) => one.step),
  );
  const faulty = new Map<CellWish, string>();
  for (const [index, fault] of refused) {
    const wish = tried[index]?.wish;
    if (wish && !faulty.has(wish)) faulty.set(wish, `${fault.what} ${fault.mend}`);
  }
  for (const [wish, reason] of faulty) bad.push(badCell(wish, reason));
  const steps = tried.filter((one) => !faulty.has(one.wish)).map((one) => one.step);
  return { steps: togetherByRow(steps), goodCount: goodCount - faulty.size, bad };
}

/** The command and input that carry out steps as one edit under one name; a single step keeps its own. */
export function oneEdit(
  steps: readonly Step[],
  label: string,
): { readonly command: string; readonly input: unknown } | null {
  const [only, other] = steps;
  if (!only) return null;
  if (other === undefined && only.command !== "rows.set") return { command: only.command, input: only.input };
  return { command: "steps.run", input: { label, steps } };
}

type RowSet = { readonly table: string; readonly id: string; readonly values: Readonly<Record<string, unknown>> };

/** Plain columns go in one step, so that a long fill costs no more than a short one. */
function togetherByRow(steps: readonly Step[]): Step[] {
  const edits = new Map<string, RowSet>();
  const others: Step[] = [];
  for (const step of steps) {
    const set = step.command === "row.set" ? rowSetOf(step.input) : null;
    if (!set) {
      others.push(step);
      continue;
    }
    const key = `${set.table} ${set.id}`;
    edits.set(key, { ...set, values: { ...edits.get(key)?.values, ...set.values } });
  }
  const [only, second] = edits.values();
  if (!only) return others;
  if (!second && others.length === 0) return [{ command: "row.set", input: only }];
  return [{ command: "rows.set", input: { edits: [...edits.values()] } }, ...others];
}

function rowSetOf(input: unknown): RowSet | null {
  if (typeof input !== "object" || input === null) return null;
  const { table, id, values } = { table: "", id: "", values: {}, ...input };
  return { table, id, values };
}

function badCell({ rowId, column, text }: CellWish, reason: string): BadCell {
  return { rowId, column: column.key, text, reason };
}
