import { Archive, ArrowRightLeft, CircleHelp, CopyPlus, FolderOpen, HardDriveDownload, X } from "lucide-react";
import { savedWords } from "../../start/words.ts";
import { closeRoute, showNextRoute } from "../files.ts";
import { tell } from "../session.ts";
import { type Action, action, waiting } from "./action.ts";

/** Route files: opening, closing, copies. */
export const fileActions: readonly Action[] = [
  action("open", {
    name: () => "Open or start a route",
    keys: ["Mod+O"],
    icon: FolderOpen,
    blocked: (s) => (s.view.getState().job ? waiting(s) : null),
    run: (s) => s.view.setState((state) => ({ isStartOpen: !state.isStartOpen })),
    place: "file",
  }),
  action("copies", {
    name: (s) => (s.view.getState().areCopiesOpen ? "Put copies and backups away" : "Show copies and backups"),
    icon: Archive,
    run: (s) => s.view.setState((state) => ({ areCopiesOpen: !state.areCopiesOpen, isImportOpen: false })),
    place: "file",
  }),
  action("saveCopy", {
    name: () => "Save a copy as",
    keys: ["Mod+Shift+S"],
    icon: CopyPlus,
    run: (s) => s.view.setState({ areCopiesOpen: true, isImportOpen: false }),
  }),
  action("saved", {
    name: () => "Say what is saved",
    keys: ["Mod+S"],
    icon: HardDriveDownload,
    run: (s) => tell(s, savedWords(s.view.getState().fileState?.editedAtIso ?? null)),
  }),
  action("nextRoute", {
    name: () => "Show the next open route",
    keys: ["Mod+]"],
    icon: ArrowRightLeft,
    blocked: (s) => waiting(s) ?? (s.view.getState().routes.length > 1 ? null : "No other route is open."),
    run: showNextRoute,
  }),
  action("closeRoute", {
    name: () => "Close the route",
    icon: X,
    blocked: waiting,
    run: (s) => closeRoute(s, s.store.get()?.routeId ?? ""),
  }),
  action("guide", {
    name: () => "Take a look round in three steps",
    icon: CircleHelp,
    run: (s) => s.view.setState({ guideStep: 0 }),
    place: "file",
  }),
];
