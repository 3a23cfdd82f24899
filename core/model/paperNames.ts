/** Sizes a set may be drawn on, all laid across. */
export const paperNames = ["ANSI A", "ANSI B", "ANSI C", "ANSI D", "A4", "A3", "A2", "A1"] as const;
