import type { Step } from "../../core/edits/runSteps.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { runCommand } from "../app/edits.ts";
import { type RefKey, splitRef } from "../app/ref.ts";
import type { Session } from "../app/session.ts";
import { titleOf } from "../panels/words.ts";
import { toolWords } from "./words.ts";

/** A chosen thing that can be decided for every layout to come, and the step that does. */
type Decided = { readonly name: string; readonly isSet: boolean; readonly step: (to: boolean) => Step };

/** Chosen terminals, and drops of chosen living units: what a pin keeps. */
function pinnable(plant: Plant, selection: readonly RefKey[]): Decided[] {
  return selection.flatMap((ref): Decided[] => {
    const { table, id } = splitRef(ref);
    if (table === "terminal" && plant.row("terminal", id)) {
      const step = (pinned: boolean) => ({ command: "terminal.pin", input: { terminalId: id, pinned } });
      return [{ name: nameOf(plant, ref), isSet: plant.rowOf("terminal", id).pinned, step }];
    }
    if (table !== "livingUnit") return [];
    return plant.where("drop", "livingUnitId", id).map((dropId) => ({
      name: nameOf(plant, ref),
      isSet: plant.rowOf("drop", dropId).pinned,
      step: (pinned) => ({ command: "drop.pin", input: { dropId, pinned } }),
    }));
  });
}

/** Chosen poles: those beside which nothing may hang are set. */
function barrable(plant: Plant, selection: readonly RefKey[]): Decided[] {
  return selection.flatMap((ref): Decided[] => {
    const { table, id } = splitRef(ref);
    if (table !== "pole" || !plant.row("pole", id)) return [];
    const step = (barred: boolean) => ({
      command: "row.set",
      input: { table: "pole", id, values: { terminalAllowed: !barred } },
    });
    return [{ name: nameOf(plant, ref), isSet: !plant.rowOf("pole", id).terminalAllowed, step }];
  });
}

const kinds = {
  pin: { find: pinnable, set: toolWords.pin, letGo: toolWords.unpin, none: toolWords.nothingToPin },
  bar: { find: barrable, set: toolWords.bar, letGo: toolWords.unbar, none: toolWords.noPoleToBar },
} as const;
type Kind = keyof typeof kinds;

function found(session: Session, kind: Kind): { readonly these: readonly Decided[]; readonly isSet: boolean } {
  const open = session.store.get();
  const these = open ? kinds[kind].find(open.plant, session.view.getState().selection) : [];
  return { these, isSet: these.length > 0 && these.every((one) => one.isSet) };
}

/** What deciding the chosen things, or letting them go where all are decided, is called. */
export function decideName(session: Session, kind: Kind): string {
  const { these, isSet } = found(session, kind);
  const names = these.length === 1 ? (these[0]?.name ?? "") : toolWords.chosenCount(these.length);
  return (isSet ? kinds[kind].letGo : kinds[kind].set)(names);
}

/** Why nothing that is chosen can be decided so, or null where something can. */
export function decideBlocked(session: Session, kind: Kind): string | null {
  return found(session, kind).these.length > 0 ? null : kinds[kind].none;
}

/** Decides all chosen things that are not yet; where all are, lets them go. One edit. */
export async function decide(session: Session, kind: Kind): Promise<void> {
  const { these, isSet } = found(session, kind);
  const steps = these.filter((one) => one.isSet === isSet).map((one) => one.step(!isSet));
  await runCommand(session, "steps.run", { label: decideName(session, kind), steps });
}

function nameOf(plant: Plant, ref: RefKey): string {
  const title = titleOf(plant, ref);
  return /^(Terminal|Pole) /.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}
