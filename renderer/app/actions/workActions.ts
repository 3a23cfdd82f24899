import { FileDown, FileInput, Files, FileText, Waypoints } from "lucide-react";
import { terminalKey } from "../../../core/sheets/book.ts";
import { oneTerminal } from "../../tools/oneTerminal.ts";
import { layOut } from "../jobs.ts";
import { drawSet, previewSheets } from "../sheetJobs.ts";
import { type Action, action, beyondDiagram, layingOut, waiting, working } from "./action.ts";
import { actionWords } from "./words.ts";

/** The work on a route, in the order it is done. */
export const workActions: readonly Action[] = [
  action("import", {
    name: () => actionWords.importList,
    keys: ["Mod+I"],
    icon: FileInput,
    blocked: working,
    run: (s) => s.view.setState((state) => ({ isImportOpen: !state.isImportOpen })),
    place: "work",
    isWritten: true,
  }),
  action("layout", {
    name: () => actionWords.layOut,
    icon: Waypoints,
    blocked: layingOut,
    run: layOut,
    place: "work",
    isWritten: true,
  }),
  action("preview", {
    name: (s) => (s.view.getState().sheets ? actionWords.closeSheets : actionWords.previewSheets),
    icon: Files,
    blocked: waiting,
    run: (s) => (s.view.getState().sheets ? s.view.setState({ sheets: null }) : previewSheets(s)),
    place: "work",
    isWritten: true,
  }),
  action("terminalSheet", {
    name: () => actionWords.terminalSheet,
    keys: ["O"],
    icon: FileText,
    blocked: (s) => waiting(s) ?? beyondDiagram(s) ?? (oneTerminal(s) === null ? actionWords.oneTerminalFirst : null),
    run: (s) => previewSheets(s, { only: [terminalKey(oneTerminal(s) ?? "")] }),
  }),
  action("draw", {
    name: () => actionWords.drawSet,
    keys: ["Mod+P"],
    icon: FileDown,
    blocked: waiting,
    run: (s) => drawSet(s),
    place: "work",
    isWritten: true,
  }),
];
