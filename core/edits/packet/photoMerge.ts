import type { BroughtPhoto } from "../../closeout/packet/packetFile.ts";
import { subjectKey } from "../../closeout/subject.ts";
import type { Route } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Row } from "../../model/tables.ts";
import { byText } from "../../plant/sorting.ts";
import { sameRow } from "../sameRow.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

/** A picture that was looked at and kept: what it says of itself without its bytes. */
export type KeptPhoto = Omit<BroughtPhoto, "base64"> & { readonly keptHash: string };

/** What of a packet was not taken in: what it said, and why not. */
export type Refused = { readonly what: string; readonly why: string };

/** What bringing photos does to a route. */
type PhotoMerge = {
  readonly rows: readonly RowChange[];
  readonly photoCount: number;
  readonly alreadyCount: number;
  readonly refused: readonly Refused[];
};

/** Merges photos into a route: the same picture of the same thing once, under the words last signed, in whatever order they come. */
export function mergedPhotos(route: Route, photos: readonly KeptPhoto[]): PhotoMerge {
  const next = new Map<string, Row<"photo">>();
  const refused: Refused[] = [];
  const counts = { photoCount: 0, alreadyCount: 0 };
  for (const photo of photos) {
    const astray = subjectAstray(route, photo);
    if (astray && !astray.ok) {
      const why = `${astray.fault.what} It may have been removed since the packet was written.`;
      refused.push({ what: told(route, photo), why });
      continue;
    }
    const id = `${subjectKey(photo)} ${photo.keptHash}`;
    const brought = { id, ...photo };
    const present = next.get(id) ?? route.photo.get(id);
    if (!present) counts.photoCount += 1;
    else counts.alreadyCount += 1;
    const [kept, other] = !present || isLater(brought, present) ? [brought, present] : [present, brought];
    if (other && !saysSame(kept, other))
      refused.push({ what: told(route, other), why: "The same picture is kept under words signed later." });
    next.set(id, kept);
  }
  const rows = [...next.values()]
    .map((row) => rowEdit("photo", route.photo.get(row.id) ?? null, row))
    .filter((one) => !sameRow(one.before, one.after));
  return { rows, ...counts, refused };
}

function told(route: Route, photo: Omit<KeptPhoto, "keptHash">): string {
  return `Photo of ${subjectTag(route, photo)}: ${photo.caption}`;
}

function saysSame(one: Row<"photo">, other: Row<"photo">): boolean {
  return one.caption === other.caption && one.moment === other.moment;
}

/** By who signed when; of two signed alike by the words, so that any order comes to the same. */
function isLater(one: Row<"photo">, other: Row<"photo">): boolean {
  const text = ({ by, moment, caption, widthPx, heightPx }: Row<"photo">): string =>
    JSON.stringify([by, moment, caption, widthPx, heightPx]);
  return (byText(one.atIso, other.atIso) || byText(text(one), text(other))) > 0;
}
