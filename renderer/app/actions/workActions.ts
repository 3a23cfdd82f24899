import { FileDown, FileInput, Files, Waypoints } from "lucide-react";
import { drawSet, layOut, previewSheets } from "../jobs.ts";
import { type Action, action, waiting, working } from "./action.ts";
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
    blocked: working,
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
