import { ChartSpline } from "lucide-react";
import { profileWords } from "../../profile/words.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** The line seen from the side. */
export const profileActions: readonly Action[] = [
  action("profile", {
    name: (s) => (s.view.getState().profile.isOpen ? profileWords.hide : profileWords.show),
    keys: ["Mod+E"],
    icon: ChartSpline,
    blocked: beyondDiagram,
    run: (s) => {
      s.view.setState(({ profile }) => ({
        profile: { ...profile, isOpen: !profile.isOpen, hand: null, typed: null, atM: null },
      }));
    },
    place: "view",
  }),
];
