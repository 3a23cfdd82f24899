/** What the actions of the tables reach: the table that is shown. */
export type TableHand = {
  readonly thing: string;
  readonly canAdd: boolean;
  readonly canRemove: boolean;
  readonly edit: () => void;
  readonly explain: () => void;
  readonly copy: (hasHeadings: boolean) => void;
  readonly fillDown: () => void;
  readonly clear: () => void;
  readonly addRow: () => void;
  readonly removeRows: () => void;
  readonly resetLayout: () => void;
};

/** Where the tables stand and which one is shown. */
export type TablesView = {
  readonly isOpen: boolean;
  readonly kindId: string;
  readonly isBeside: boolean;
  /** Part of the main area the tables take. */
  readonly sizeFrac: number;
  /** The table that is shown; null while there is none. */
  readonly hand: TableHand | null;
};

/** Tables put away, poles first, below the diagram. */
export const plainTables: TablesView = { isOpen: false, kindId: "pole", isBeside: false, sizeFrac: 0.5, hand: null };
