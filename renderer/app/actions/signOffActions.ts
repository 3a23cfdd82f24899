import { PackageCheck, Signature } from "lucide-react";
import { signOffWords } from "../../closeout/signoff/words.ts";
import { deliver } from "../jobs.ts";
import { besideTurned } from "../sideRoom.ts";
import { type Action, action, waiting } from "./action.ts";
import { actionWords, topicWords } from "./words.ts";

/** Signing for what was built. */
export const signOffActions: readonly Action[] = [
  action("signOff", {
    name: (s) => (s.view.getState().sideRoom === "signOff" ? signOffWords.hide : signOffWords.show),
    keys: ["Mod+Shift+G"],
    icon: Signature,
    blocked: waiting,
    run: (s) => s.view.setState(besideTurned("signOff")),
    place: "closeout",
  }),
  action("deliver", {
    name: () => actionWords.deliver,
    icon: PackageCheck,
    blocked: waiting,
    run: deliver,
    topic: topicWords.work,
    isWritten: true,
  }),
];
