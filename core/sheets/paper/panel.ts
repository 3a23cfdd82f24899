import type { Mark } from "./displayList.ts";
import { stroke, words } from "./marks.ts";
import type { PaperBox } from "./paper.ts";

/** From a panel's top to the rule under its heading, mm. */
export const panelRuleMm = 4.4;

/** Room a panel's heading takes, mm. */
export const panelHeadMm = 7;

/** A panel's heading: words over a rule across its box. */
export function panelHead(text: string, box: PaperBox): readonly Mark[] {
  const y = box.top - panelRuleMm;
  return [
    words(text, [box.left, box.top - 2.8], { face: "plainBold", heightMm: 2.8 }),
    stroke("tables", "bold", [
      [box.left, y],
      [box.right, y],
    ]),
  ];
}

/** What is left of a box under its heading. */
export function underHead(box: PaperBox): PaperBox {
  return { ...box, top: box.top - panelHeadMm };
}

/** Where a table stands whose upper rule is the heading's. */
export function tableUnderHead(box: PaperBox): PaperBox {
  return { ...box, top: box.top - panelRuleMm };
}
