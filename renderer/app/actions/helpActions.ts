import { BookOpen, BookOpenCheck, Contrast, Keyboard, Search, Type } from "lucide-react";
import { pageHere } from "../../help/pageHere.ts";
import { machine } from "../machine.ts";
import { tell } from "../session.ts";
import { type Action, action } from "./action.ts";
import { actionWords, topicWords } from "./words.ts";

const themes = ["system", "light", "dark", "contrast"] as const;
const textSteps = [100, 125, 150] as const;

const afterTheme = (): (typeof themes)[number] => after(themes, machine.getState().theme);
const afterText = (): number => after<number>(textSteps, machine.getState().textPercent);

/** Finding, help and the look of the window; none of them needs a route. */
export const helpActions: readonly Action[] = [
  action("find", {
    name: () => actionWords.find,
    keys: ["Mod+K", "Mod+F"],
    icon: Search,
    blocked: () => null,
    run: (s) => s.view.setState({ overlay: "finder" }),
    isAtOnce: true,
    place: "help",
    topic: topicWords.help,
    isEverywhere: true,
  }),
  action("help", {
    name: () => actionWords.helpHere,
    keys: ["F1"],
    icon: BookOpen,
    blocked: () => null,
    run: (s) => s.view.setState({ helpPage: pageHere(), helpSought: "" }),
    isAtOnce: true,
    place: "help",
    topic: topicWords.help,
    isEverywhere: true,
  }),
  action("keys", {
    name: () => actionWords.showKeys,
    keys: ["?"],
    icon: Keyboard,
    blocked: () => null,
    run: (s) => s.view.setState({ overlay: "keys" }),
    isAtOnce: true,
    place: "help",
    topic: topicWords.help,
  }),
  action("rules", {
    name: () => "Read the rule book",
    icon: BookOpenCheck,
    blocked: () => null,
    run: (s) => s.view.setState({ helpPage: "rules", helpSought: "" }),
    topic: "Help and look",
  }),
  action("theme", {
    name: () => actionWords.changeTheme(afterTheme()),
    icon: Contrast,
    blocked: () => null,
    run: (s) => {
      machine.setState({ theme: afterTheme() });
      tell(s, actionWords.themeIs(machine.getState().theme));
    },
    place: "help",
    topic: topicWords.help,
  }),
  action("text", {
    name: () => actionWords.changeText(afterText()),
    icon: Type,
    blocked: () => null,
    run: (s) => {
      machine.setState({ textPercent: afterText() });
      tell(s, actionWords.textIs(machine.getState().textPercent));
    },
    topic: topicWords.help,
  }),
];

function after<T>(steps: readonly T[], present: T): T {
  return steps[(steps.indexOf(present) + 1) % steps.length] ?? present;
}
