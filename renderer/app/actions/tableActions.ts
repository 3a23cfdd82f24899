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
import { actionWords, topicWords } from "./words.ts";

const topic = topicWords.tables;

/** What is done in the tables. Their keys work while a table has the focus (tables/gridKeys.ts). */
export const tableActions: readonly Action[] = [
  action("tables", {
    name: (s) => (s.view.getState().tables.isOpen ? actionWords.hideTables : actionWords.showTables),
    keys: ["Mod+G"],
    icon: Table2,
    blocked: beyondDiagram,
    run: (s) => s.view.setState(({ tables }) => ({ tables: { ...tables, isOpen: !tables.isOpen } })),
    place: "view",
    topic,
  }),
  action("tablesBeside", {
    name: (s) => (s.view.getState().tables.isBeside ? actionWords.tablesBelow : actionWords.tablesBeside),
    icon: PanelBottomDashed,
    topic,
    blocked: inTable,
    run: (s) => s.view.setState(({ tables }) => ({ tables: { ...tables, isBeside: !tables.isBeside } })),
  }),
  onTable(
    "tableAdd",
    actionWords.addRow,
    RowsIcon,
    (hand) => hand.addRow(),
    (hand) => (hand.canAdd ? null : actionWords.notMadeHere(hand.thing)),
  ),
  onTable(
    "tableRemove",
    actionWords.removeRows,
    Trash2,
    (hand) => hand.removeRows(),
    (hand) => (hand.canRemove ? null : actionWords.notRemovedHere(hand.thing)),
  ),
  onTable("tableEdit", actionWords.editCell, Pencil, (hand) => hand.edit()),
  onTable("tableExplain", actionWords.explainFigure, Info, (hand) => hand.explain()),
  onTable("tableCopy", actionWords.copyCells, Copy, (hand) => hand.copy(false)),
  onTable("tableCopyHeadings", actionWords.copyWithHeadings, Copy, (hand) => hand.copy(true)),
  onTable("tableFill", actionWords.fillDown, ArrowDownToLine, (hand) => hand.fillDown()),
  onTable("tableClear", actionWords.emptyCells, Eraser, (hand) => hand.clear()),
  onTable("tableReset", actionWords.resetColumns, RotateCcw, (hand) => hand.resetLayout()),
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
  return beyondDiagram(session) ?? (session.view.getState().tables.hand ? null : actionWords.noTable);
}
