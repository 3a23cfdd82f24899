import type { AskedReading, PacketSheet, SignedContent } from "../../core/closeout/packet/packetFile.ts";
import { readingId } from "../../core/closeout/subject.ts";
import type { Keeping, Typed } from "./keeping.ts";

/** What a crew has put into the page, kept field by field at every change. */
export type PacketState = {
  readonly sheet: PacketSheet;
  readonly keeping: Keeping;
  readonly who: () => string;
  readonly setWho: (name: string) => boolean;
  readonly typed: (asked: AskedReading) => Typed | null;
  /** Signs and keeps what is typed; empty forgets it. */
  readonly type: (asked: AskedReading, text: string) => boolean;
  /** What files written before said of a field. */
  readonly sent: (asked: AskedReading) => readonly SignedContent[];
  readonly noteSent: (asked: AskedReading, said: SignedContent) => void;
  /** Every field, card by card. */
  readonly asked: readonly AskedReading[];
};

/** The name a field is kept under: that of the reading it asks for. */
export function fieldName(asked: AskedReading): string {
  return readingId(asked, asked.what, asked.wavelengthNm);
}

/** The state of a packet's page. */
export function packetState(sheet: PacketSheet, keeping: Keeping, nowIso: () => string): PacketState {
  const who = (): string => keeping.read("who") ?? "";
  const sent = (asked: AskedReading): SignedContent[] =>
    parsed<SignedContent[]>(keeping.read(`sent ${fieldName(asked)}`)) ?? [];
  const own = sheet.cards.flatMap((card) => card.groups.flatMap((group) => group.asked));
  return {
    sheet,
    keeping,
    who,
    setWho: (name) => keeping.write("who", name),
    typed: (asked) => {
      const typed = parsed<Typed>(keeping.read(`read ${fieldName(asked)}`));
      return typed === null || typed.text.trim() === "" ? null : typed;
    },
    type: (asked, text) =>
      keeping.write(`read ${fieldName(asked)}`, JSON.stringify({ text, by: who(), atIso: nowIso() } satisfies Typed)),
    sent,
    noteSent(asked, { value, text, by, atIso }) {
      const before = sent(asked);
      const said = { value, text, by, atIso };
      const isSaid = before.some((one) => JSON.stringify(one) === JSON.stringify(said));
      if (!isSaid) keeping.write(`sent ${fieldName(asked)}`, JSON.stringify([...before, said].slice(-50)));
    },
    // cards of one pole ask for the same height and bonds; each is read once
    asked: [...new Map(own.map((one) => [fieldName(one), one])).values()],
  };
}

/** What was kept, as it was written by this very page. */
function parsed<T>(text: string | null): T | null {
  try {
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}
