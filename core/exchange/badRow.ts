/** A row of a file that cannot be taken: where it stands, what it says and what would be taken instead. */
export type BadRow = {
  readonly file: string;
  /** Counted as the table's `lineWord` says, from 1; 0 where it is about the whole file. */
  readonly line: number;
  /** Heading of the column; empty where it is about the whole row. */
  readonly column: string;
  readonly value: string;
  /** One sentence for a person. */
  readonly what: string;
  /** What would be accepted in its place. */
  readonly accepted: string;
};

const longestValue = 80;

/** A value as it is shown in a message: long ones cut. */
export function shownValue(value: string): string {
  return value.length > longestValue ? `${value.slice(0, longestValue)}…` : value;
}
