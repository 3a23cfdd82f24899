import {
  ArrowDownToLine,
  Copy,
  Eraser,
  Info,
  PanelBottomDashed,
  Pencil,
  RotateCcw,
  RowsIcon,
  Table2,
  Trash2,
} from "lucide-react";
import type { TableHand } from "../../tables/tableHand.ts";
import type { Session } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";

const topic = "Tables";

/** What is done in the tables. Their keys work while a table has the focus (tables/gridKeys.ts). */
export const tableActions: readonly Action[] = [
  action("tables", {
    name: (s) => (s.view.getState().tables.isOpen ? "Put the tables away" : "Show the tables"),
    keys: ["Mod+G"],
    icon: Table2,
    blocked: beyondDiagram,
    run: (s) => s.view.setState(({ tables }) => ({ tables: { ...tables, isOpen: !tables.isOpen } })),
    place: "view",
    topic,
  }),
  action("tablesBeside", {
    name: (s) => (s.view.getState().tables.isBeside ? "Put the tables below" : "Put the tables beside"),
    icon: PanelBottomDashed,
    topic,
    blocked: inTable,
    run: (s) => s.view.setState(({ tables }) => ({ tables: { ...tables, isBeside: !tables.isBeside } })),
  }),
  onTable(
    "tableAdd",
    "Add a row",
    RowsIcon,
    (hand) => hand.addRow(),
    (hand) => (hand.canAdd ? null : `A ${hand.thing} is not made in this table.`),
  ),
  onTable(
    "tableRemove",
    "Remove the rows",
    Trash2,
    (hand) => hand.removeRows(),
    (hand) => (hand.canRemove ? null : `A ${hand.thing} is not removed in this table.`),
  ),
  onTable("tableEdit", "Edit the cell", Pencil, (hand) => hand.edit()),
  onTable("tableExplain", "Explain the figure", Info, (hand) => hand.explain()),
  onTable("tableCopy", "Copy", Copy, (hand) => hand.copy(false)),
  onTable("tableCopyHeadings", "Copy with headings", Copy, (hand) => hand.copy(true)),
  onTable("tableFill", "Fill down", ArrowDownToLine, (hand) => hand.fillDown()),
  onTable("tableClear", "Empty the cells", Eraser, (hand) => hand.clear()),
  onTable("tableReset", "Reset the columns", RotateCcw, (hand) => hand.resetLayout()),
];

function onTable(
  id: string,
  name: string,
  icon: Action["icon"],
  run: (hand: TableHand) => void,
  blocked: (hand: TableHand) => string | null = () => null,
): Action {
  return action(id, {
    name: () => name,
    icon,
    topic,
    blocked: (s) => {
      const { hand } = s.view.getState().tables;
      return inTable(s) ?? working(s) ?? (hand ? blocked(hand) : null);
    },
    run: (s) => {
      const { hand } = s.view.getState().tables;
      if (hand) run(hand);
    },
  });
}

function inTable(session: Session): string | null {
  return beyondDiagram(session) ?? (session.view.getState().tables.hand ? null : "No table is shown.");
}
