import type { Row } from "../model/tables.ts";

/** A reading that stands as an input of `reading.take`: a person takes it down anew. */
export function takenAgain({
  id: _,
  packetId: __,
  madeOn: ___,
  ...read
}: Row<"reading">): Omit<Row<"reading">, "id" | "packetId" | "madeOn"> {
  return read;
}
