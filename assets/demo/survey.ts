import { newtonsPerPoundForce } from "../../core/units/constants.ts";
import { demoPlace, feet } from "./place.ts";
import { planted } from "./planted.ts";

/** What the surveyor noted beside the line: rows without ids, the span by the tags of its poles. */
export const demoSurvey = {
  /** What the demo's anchors hold, as their maker would say: 15 000 lbf. */
  anchorN: 15_000 * newtonsPerPoundForce,
  structures: [
    {
      ...span(planted.nearSign),
      name: "Feed store sign",
      kind: "sign",
      offsetM: feet(80),
      lengthM: feet(6),
      besideM: feet(planted.nearSign.besideFt),
      side: "right",
      heightM: feet(planted.nearSign.heightFt),
      bottomM: null,
    },
    {
      from: "B-05",
      to: "B-06",
      name: "Orchard barn",
      kind: "building",
      offsetM: feet(60),
      lengthM: feet(30),
      besideM: feet(14),
      side: "left",
      heightM: feet(22),
      bottomM: null,
    },
  ],
  wireSags: [
    {
      ...span(planted.tautTelephone),
      owner: demoPlace.telephoneOwner,
      kind: "communication",
      sagM: feet(planted.tautTelephone.sagFt),
    },
    { from: "M-02", to: "M-03", owner: demoPlace.telephoneOwner, kind: "communication", sagM: feet(1.6) },
  ],
} as const;

function span({ from, to }: { readonly from: string; readonly to: string }) {
  return { from, to };
}
