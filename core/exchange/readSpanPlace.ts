import type { RowReader } from "./rowReader.ts";

/** The poles of the span a row is about, by their tags as written. */
export type SpanTags = { readonly fromTag: string; readonly toTag: string };

/** Reads which span a row is about; a row that does not name both poles is refused. */
export function readSpanTags(row: RowReader, thing: string): SpanTags {
  const [fromTag, toTag] = [row.text("fromTag"), row.text("toTag")];
  if (fromTag === "" || toTag === "")
    row.refuse(
      fromTag === "" ? "fromTag" : "toTag",
      `The ${thing} does not name both poles of its span.`,
      "the tags of the span's two poles",
    );
  return { fromTag, toTag };
}

/** Reads how far along its span a row's thing lies, m; null where it is refused. */
export function readOffsetM(row: RowReader, thing: string): number | null {
  const offsetM = row.lengthM("offset");
  if (row.text("offset") === "" || (offsetM !== null && offsetM < 0))
    row.refuse("offset", `The ${thing} has no distance from its first pole.`, "a distance of 0 or more");
  return offsetM;
}

/** Reads a length that must be there, above nothing or nothing itself where that may be, m; null where it is refused. */
export function readSizeM(row: RowReader, field: string, what: string, mayBeNothing = false): number | null {
  const sizeM = row.lengthM(field);
  if (row.text(field) === "" || (sizeM !== null && !(sizeM > 0 || (mayBeNothing && sizeM === 0))))
    row.refuse(field, what, mayBeNothing ? "a length of 0 or more" : "a length of more than 0");
  return sizeM;
}
