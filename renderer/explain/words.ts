/** Words of the explanations. */
export const explainWords = {
  how: (figure: string) => `${figure}; ? says how it comes about`,
  pin: "Pin",
  pinned: "Unpin",
  copy: "Copy as text",
  copied: "Copied.",
  close: "Close the explanation",
  numbersIn: "With the numbers put in, in SI units",
  inputs: "What goes in",
  limit: "Limit",
  source: "Formula from",
  gone: "The row this figure belongs to is gone.",
  dialog: "How this figure comes about",
  pinnedRegion: "Pinned explanations",
} as const;
