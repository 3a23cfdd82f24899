/** Keys of the tables' actions; they work while the table has the focus. */
const gridKeys: Readonly<Record<string, string>> = {
  tableEdit: "F2",
  tableExplain: "?",
  tableCopy: "Mod+C",
  tableCopyHeadings: "Mod+Alt+C",
  tableFill: "Mod+D",
  tableClear: "Delete",
  tableRemove: "Mod+Delete",
  tableAdd: "Mod+Enter",
};

/** The key of an action in the tables. */
export function gridKeyOf(actionId: string): string | undefined {
  return gridKeys[actionId];
}

/** The action a key asks for in the tables; Copy is left to the clipboard's own event. */
export function gridActionOf(key: string): string | undefined {
  return Object.keys(gridKeys).find((id) => gridKeys[id] === key && id !== "tableCopy");
}
