import { FlipHorizontal2, Merge } from "lucide-react";
import { freshTool } from "../../tools/adding/addingState.ts";
import { addingTools } from "../../tools/adding/addingTools.ts";
import { words } from "../../tools/adding/words.ts";
import { runCommand } from "../edits.ts";
import { splitRef } from "../ref.ts";
import type { Session } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";
import { actionWords } from "./words.ts";

/** Adding and changing the line by hand. */
export const addingActions: readonly Action[] = [
  ...addingTools.map(({ tool, actionId, key, icon }) =>
    action(actionId, {
      name: (s) => (s.view.getState().adding?.tool === tool ? words.stop(words.names[tool]) : words.names[tool]),
      keys: [key],
      icon,
      blocked: (s) => beyondDiagram(s) ?? working(s),
      run: (s) => {
        const adding = s.view.getState().adding?.tool === tool ? null : freshTool(tool);
        s.view.setState({ adding, measure: null, hand: null });
        document.querySelector<HTMLElement>("[data-diagram]")?.focus();
      },
    }),
  ),
  action("joinSpans", {
    name: () => actionWords.joinSpans,
    keys: ["J"],
    icon: Merge,
    blocked: (s) => beyondDiagram(s) ?? working(s) ?? (chosenPoleId(s) === null ? actionWords.onePoleFirst : null),
    run: (s) => runCommand(s, "span.join", { poleId: chosenPoleId(s) }),
  }),
  action("reverseCable", {
    name: () => actionWords.reverseCable,
    keys: ["Shift+V"],
    icon: FlipHorizontal2,
    blocked: (s) => beyondDiagram(s) ?? working(s) ?? (chosenCableId(s) === null ? actionWords.spanFirst : null),
    run: (s) => runCommand(s, "cable.reverse", { cableId: chosenCableId(s) }),
  }),
];

function chosenPoleId(session: Session): string | null {
  const [ref, ...others] = session.view.getState().selection;
  return ref && others.length === 0 && splitRef(ref).table === "pole" ? splitRef(ref).id : null;
}

function chosenCableId(session: Session): string | null {
  const [ref, ...others] = session.view.getState().selection;
  const plant = session.store.get()?.plant;
  if (!ref || !plant || others.length > 0 || splitRef(ref).table !== "span") return null;
  const cableIds = new Set(
    plant.where("cableRun", "spanId", splitRef(ref).id).map((id) => plant.rowOf("cableRun", id).cableId),
  );
  return cableIds.size === 1 ? ([...cableIds][0] ?? null) : null;
}
