/** Panels by what tells them apart on the page, and the page of the help that is about each. */
const panels = [
  [".settings", "settings"],
  [".start", "start"],
  [".copies", "copies"],
  [".what-if", "whatIf"],
  [".import:not(.what-if)", "import"],
  [".sheets", "sheets"],
  [".findings", "findings"],
  [".tables", "tables"],
  [".profile", "profile"],
  [".traces", "traces"],
  [".light-route", "light"],
  [".balance", "balance"],
  [".closeout", "closeout"],
  [".help", "finder"],
  [".explanation", "numbers"],
  [".history", "history"],
  [".layout", "layout"],
  [".packets", "packets"],
  [".revisions", "revisions"],
  [".sign-off", "signOff"],
  [".side", "chosen"],
  ["[data-diagram]", "diagram"],
] as const;

/** What fills the middle of the window; one of them is shown. */
const rooms = [".settings", ".start", ".import:not(.what-if)", ".sheets", "[data-diagram]"];

/** The page about the panel that has the focus; about what fills the window where none has it. */
export function pageHere(): string {
  const focused = document.activeElement;
  const around = panels.find(([mark]) => focused?.closest(mark));
  const shown = panels.find(([mark]) => rooms.includes(mark) && document.querySelector(mark));
  return (around ?? shown ?? ["", "start"])[1];
}
