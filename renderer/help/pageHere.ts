/** Panels by what tells them apart on the page, and the page of the help that is about each. */
const panels = [
  [".settings", "settings"],
  [".start", "start"],
  [".import", "import"],
  [".sheets", "sheets"],
  [".findings", "findings"],
  [".tables", "tables"],
  [".profile", "profile"],
  [".help", "finder"],
  [".side", "chosen"],
  ["[data-diagram]", "diagram"],
] as const;

/** The page about the panel that has the focus; about the first one shown where none has it. */
export function pageHere(): string {
  const focused = document.activeElement;
  const around = panels.find(([mark]) => focused?.closest(mark));
  const shown = panels.find(([mark]) => mark !== ".help" && mark !== ".findings" && document.querySelector(mark));
  return (around ?? shown ?? ["", "start"])[1];
}
