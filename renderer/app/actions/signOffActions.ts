import { Signature } from "lucide-react";
import { signOffWords } from "../../closeout/signoff/words.ts";
import { type Action, action, waiting } from "./action.ts";

/** Signing for what was built. */
export const signOffActions: readonly Action[] = [
  action("signOff", {
    name: (s) => (s.view.getState().isSignOffOpen ? signOffWords.hide : signOffWords.show),
    keys: ["Mod+Shift+G"],
    icon: Signature,
    blocked: waiting,
    run: (s) =>
      s.view.setState((state) => ({
        isSignOffOpen: !state.isSignOffOpen,
        isRevisionsOpen: false,
        isHistoryOpen: false,
        isLayoutOpen: false,
        isSettingsOpen: false,
        isSideOpen: state.isSignOffOpen ? state.isSideOpen : true,
      })),
    place: "history",
  }),
];
