/** Words of the messages about what could not be done. */
export const words = {
  putAway: "Put the message away",
  copy: "Copy the message",
  copied: "The message is copied.",
  tryAgain: "Try again",
  reload: "Load the window again",
  readAgain: "Read the route again",
  readDone: "This is the route as the file holds it.",
  lookAgain: "Look again",
  openAnother: "Choose another file",
  copies: "Show copies and backups",
  saveElsewhere: "Save a copy elsewhere",
  bringIn: "Bring in lists",
  standards: "Open the standards",
  signOff: "Open the sign-off",
  showRow: (title: string): string => `Show ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
} as const;

/** Faults whose sentence says all: what they are about has no name a person knows. */
export const namelessCodes: ReadonlySet<string> = new Set([
  "missing-row",
  "taken-id",
  "no-length",
  "no-such-route",
  "not-listed",
  "no-backup",
  "nothing-to-undo",
  "nothing-to-redo",
  "no-files",
]);

/** What a person reads in place of what only helps whoever mends the program; that is copied with the message. */
export const plainWords: Readonly<Record<string, string>> = {
  "program-error": "The program made a mistake and could not do this.",
  "bad-request": "This window asked for something in a form the program does not take.",
  "bad-input": "This edit was asked for in a form the program does not take.",
  "unknown-method": "This window asked for something the program does not know.",
  "unknown-command": "This window asked for an edit the program does not know.",
};
