import type { Row } from "../model/tables.ts";

/** A reading that stands as an input of `reading.take`: a person takes it down anew. */
export function takenAgain(reading: Row<"reading">): Omit<Row<"reading">, "id" | "packetId" | "madeOn"> {
  const { kind, subjectId, port, alongId, what, wavelengthNm, value, text, by, atIso } = reading;
  return { kind, subjectId, port, alongId, what, wavelengthNm, value, text, by, atIso };
}
