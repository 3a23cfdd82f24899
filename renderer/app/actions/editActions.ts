import { ListTree, Redo2, Undo2, X } from "lucide-react";
import { redo, undo } from "../edits.ts";
import type { Session } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";

/** What changes the route or takes a change back. */
export const editActions: readonly Action[] = [
  action("undo", {
    name: (s) => stepName("Undo", s.store.get()?.history.undo),
    keys: ["Mod+Z"],
    icon: Undo2,
    blocked: (s) => working(s) ?? (s.store.get()?.history.undo ? null : "Nothing to undo."),
    run: undo,
    place: "history",
  }),
  action("redo", {
    name: (s) => stepName("Redo", s.store.get()?.history.redo),
    keys: ["Mod+Shift+Z", "Mod+Y"],
    icon: Redo2,
    blocked: (s) => working(s) ?? (s.store.get()?.history.redo ? null : "Nothing to redo."),
    run: redo,
    place: "history",
  }),
  action("all", {
    name: () => "Choose all terminals",
    keys: ["Mod+A"],
    icon: ListTree,
    blocked: beyondDiagram,
    run: (s) => {
      const ids = [...(s.store.get()?.route.terminal.keys() ?? [])];
      s.view.setState({ selection: ids.map((id) => `terminal/${id}` as const) });
    },
  }),
  action("back", {
    name: () => "Clear the selection",
    keys: ["Escape"],
    icon: X,
    run: backOut,
  }),
];

function stepName(verb: string, step: string | null | undefined): string {
  return step ? `${verb} ${step.charAt(0).toLowerCase()}${step.slice(1)}` : verb;
}

/** Escape backs out one level: a fault, then the sheets, then the import, then the selection. */
function backOut(session: Session): void {
  const { fault, sheets, isImportOpen } = session.view.getState();
  if (fault) session.view.setState({ fault: null });
  else if (sheets) session.view.setState({ sheets: null });
  else if (isImportOpen) session.view.setState({ isImportOpen: false });
  else session.view.setState({ selection: [], hover: null });
}
