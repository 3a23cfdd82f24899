/** Words of the history. */
export const historyWords = {
  title: "History",
  show: "Show the history",
  hide: "Put the history away",
  done: "Done, newest first",
  undone: "Taken back",
  nothing: "Nothing has been done to this route yet.",
  undoTo: (count: number) => `Undo to here, ${count} ${count === 1 ? "step" : "steps"}`,
  redoTo: (count: number) => `Redo to here, ${count} ${count === 1 ? "step" : "steps"}`,
  kinds: { edit: "", undo: "undone: ", redo: "redone: " },
} as const;
