/** Words of the finder. */
export const words = {
  title: "Find anything",
  field: "Find a pole, address, terminal, cable, port, sheet, action, setting or help page",
  list: "What was found",
  pole: "Pole",
  terminal: "Terminal",
  port: "port",
  cable: "Cable",
  closure: "Closure",
  strand: "Strand",
  unit: "Living unit",
  sheet: "Sheet",
  action: "Action",
  setting: "Setting",
  help: "Help",
  hint: "Type any part of a name; a slip of the hand is forgiven. Enter goes there.",
  none: (typed: string): string =>
    `Nothing is called “${typed}”. Try a pole tag, an address or a verb such as “lay out”.`,
  count: (count: number): string => (count === 1 ? "1 found" : `${count} found`),
  open: "Find anything",
} as const;
