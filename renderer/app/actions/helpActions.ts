import { BookOpen, BookOpenCheck, Contrast, Keyboard, Search, Type } from "lucide-react";
import { pageHere } from "../../help/pageHere.ts";
import { machine } from "../machine.ts";
import { tell } from "../session.ts";
import { type Action, action } from "./action.ts";

const themes = ["system", "light", "dark", "contrast"] as const;
const themeWords = {
  system: "the system's colours",
  light: "light colours",
  dark: "dark colours",
  contrast: "high contrast",
} as const;
const textSteps = [100, 125, 150] as const;

const afterTheme = (): (typeof themes)[number] => after(themes, machine.getState().theme);
const afterText = (): number => after<number>(textSteps, machine.getState().textPercent);

/** Finding, help and the look of the window; none of them needs a route. */
export const helpActions: readonly Action[] = [
  action("find", {
    name: () => "Find anything",
    keys: ["Mod+K", "Mod+F"],
    icon: Search,
    blocked: () => null,
    run: (s) => s.view.setState({ overlay: "finder" }),
    place: "help",
    topic: "Help and look",
    isEverywhere: true,
  }),
  action("help", {
    name: () => "Help for this panel",
    keys: ["F1"],
    icon: BookOpen,
    blocked: () => null,
    run: (s) => s.view.setState({ helpPage: pageHere(), helpSought: "" }),
    place: "help",
    topic: "Help and look",
    isEverywhere: true,
  }),
  action("keys", {
    name: () => "Show all keys",
    keys: ["?"],
    icon: Keyboard,
    blocked: () => null,
    run: (s) => s.view.setState({ overlay: "keys" }),
    place: "help",
    topic: "Help and look",
  }),
  action("rules", {
    name: () => "Read the rule book",
    icon: BookOpenCheck,
    blocked: () => null,
    run: (s) => s.view.setState({ helpPage: "rules", helpSought: "" }),
    topic: "Help and look",
  }),
  action("theme", {
    name: () => `Change to ${themeWords[afterTheme()]}`,
    icon: Contrast,
    blocked: () => null,
    run: (s) => {
      machine.setState({ theme: afterTheme() });
      tell(s, `The window has ${themeWords[machine.getState().theme]}.`);
    },
    place: "help",
    topic: "Help and look",
  }),
  action("text", {
    name: () => `Show words at ${afterText()} %`,
    icon: Type,
    blocked: () => null,
    run: (s) => {
      machine.setState({ textPercent: afterText() });
      tell(s, `Words are shown at ${machine.getState().textPercent} %.`);
    },
    topic: "Help and look",
  }),
];

function after<T>(steps: readonly T[], present: T): T {
  return steps[(steps.indexOf(present) + 1) % steps.length] ?? present;
}
