/** Words of the key sheet. */
export const words = {
  title: "Keys",
  print: "Print the keys",
  reset: "Reset all keys",
  close: "Close",
  change: (name: string): string => `Change the key of ${name}`,
  changeShort: "Change",
  press: "Press the new key, or Esc to keep the old one",
  taken: (key: string, name: string): string => `${key} is taken by “${name}”. Press another key.`,
  fixed: (key: string): string => `${key} is kept by fields, lists and buttons. Press another key.`,
  none: "no key",
  or: "or",
  action: "Action",
  key: "Key",
  about:
    "Keys without Ctrl work while the diagram has the focus, those of the tables while a table has it. Changes are kept on this machine.",
} as const;
