import { Archive, ArrowRightLeft, CircleHelp, CopyPlus, FolderOpen, HardDriveDownload, X } from "lucide-react";
import { savedWords } from "../../start/words.ts";
import { closeRoute, showNextRoute } from "../files.ts";
import { tell } from "../session.ts";
import { type Action, action, waiting } from "./action.ts";
import { actionWords, topicWords } from "./words.ts";

/** Route files: opening, closing, copies. */
export const fileActions: readonly Action[] = [
  action("open", {
    name: () => actionWords.open,
    keys: ["Mod+O"],
    icon: FolderOpen,
    blocked: (s) => (s.view.getState().job ? waiting(s) : null),
    run: (s) => s.view.setState((state) => ({ isStartOpen: !state.isStartOpen })),
    place: "file",
  }),
  action("copies", {
    name: (s) => (s.view.getState().areCopiesOpen ? actionWords.hideCopies : actionWords.showCopies),
    icon: Archive,
    run: (s) => s.view.setState((state) => ({ areCopiesOpen: !state.areCopiesOpen, isImportOpen: false })),
    place: "file",
  }),
  action("saveCopy", {
    name: () => actionWords.saveCopy,
    keys: ["Mod+Shift+S"],
    icon: CopyPlus,
    topic: topicWords.file,
    run: (s) => s.view.setState({ areCopiesOpen: true, isImportOpen: false }),
  }),
  action("saved", {
    name: () => actionWords.saySaved,
    keys: ["Mod+S"],
    icon: HardDriveDownload,
    topic: topicWords.file,
    run: (s) => tell(s, savedWords(s.view.getState().fileState?.editedAtIso ?? null)),
  }),
  action("nextRoute", {
    name: () => actionWords.nextRoute,
    keys: ["Mod+]"],
    icon: ArrowRightLeft,
    topic: topicWords.file,
    blocked: (s) => waiting(s) ?? (s.view.getState().routes.length > 1 ? null : actionWords.noOther),
    run: showNextRoute,
  }),
  action("closeRoute", {
    name: () => actionWords.closeRoute,
    icon: X,
    topic: topicWords.file,
    blocked: waiting,
    run: (s) => closeRoute(s, s.store.get()?.routeId ?? ""),
  }),
  action("guide", {
    name: () => actionWords.guide,
    icon: CircleHelp,
    run: (s) => s.view.setState({ guideStep: 0 }),
    place: "file",
  }),
];
