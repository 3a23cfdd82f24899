import { ListTree, Redo2, Undo2, X } from "lucide-react";
import { putBack } from "../../balance/balanceHand.ts";
import { letProfileGo } from "../../profile/profileHand.ts";
import { giveUp } from "../../tools/carry.ts";
import { chooseAll } from "../../tools/chooseAll.ts";
import { redo, undo } from "../edits.ts";
import type { Session } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";
import { actionWords } from "./words.ts";

/** What changes the route or takes a change back. */
export const editActions: readonly Action[] = [
  action("undo", {
    name: (s) => stepName(actionWords.undo, s.store.get()?.history.undo),
    keys: ["Mod+Z"],
    icon: Undo2,
    blocked: (s) => working(s) ?? (s.store.get()?.history.undo ? null : actionWords.nothingToUndo),
    run: undo,
    place: "history",
  }),
  action("redo", {
    name: (s) => stepName(actionWords.redo, s.store.get()?.history.redo),
    keys: ["Mod+Shift+Z", "Mod+Y"],
    icon: Redo2,
    blocked: (s) => working(s) ?? (s.store.get()?.history.redo ? null : actionWords.nothingToRedo),
    run: redo,
    place: "history",
  }),
  action("all", {
    name: () => actionWords.chooseAll,
    keys: ["Mod+A"],
    icon: ListTree,
    blocked: beyondDiagram,
    run: chooseAll,
  }),
  action("back", {
    name: () => actionWords.clearSelection,
    keys: ["Escape"],
    icon: X,
    run: backOut,
  }),
];

function stepName(verb: string, step: string | null | undefined): string {
  return step ? `${verb} ${step.charAt(0).toLowerCase()}${step.slice(1)}` : verb;
}

/** Escape backs out one level: a drag or a field on the diagram, a fault, then the sheets, then the import, then the selection. */
function backOut(session: Session): void {
  const { fault, sheets, isSettingsOpen, isImportOpen, isStartOpen, areCopiesOpen, isWhatIfOpen } =
    session.view.getState();
  const { inPlace, measure, isKindsOpen, arranging, worksheet } = session.view.getState();
  if (giveUp(session) || letProfileGo(session) || putBack(session)) return;
  // printing takes the focus off the sheet, and with it the sheet's own Escape
  if (worksheet) session.view.setState({ worksheet: null });
  else if (inPlace) session.view.setState({ inPlace: null });
  else if (fault) session.view.setState({ fault: null });
  else if (isStartOpen) session.view.setState({ isStartOpen: false });
  else if (sheets) session.view.setState({ sheets: null });
  else if (isSettingsOpen) session.view.setState({ isSettingsOpen: false });
  else if (isImportOpen) session.view.setState({ isImportOpen: false });
  else if (areCopiesOpen) session.view.setState({ areCopiesOpen: false });
  else if (isWhatIfOpen) session.view.setState({ isWhatIfOpen: false });
  else if (arranging) session.view.setState({ arranging: null });
  else if (measure) session.view.setState({ measure: null });
  else if (isKindsOpen) session.view.setState({ isKindsOpen: false });
  else session.view.setState({ selection: [], hover: null });
}
