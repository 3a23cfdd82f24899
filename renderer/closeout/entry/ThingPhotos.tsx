import { useState } from "react";
import { photoText } from "../../../core/closeout/photoText.ts";
import { type Subject, subjectKey } from "../../../core/closeout/subject.ts";
import type { Row } from "../../../core/model/tables.ts";
import { byText } from "../../../core/plant/sorting.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useKeptUrl } from "../useKeptUrl.ts";
import { entryWords as words } from "../words.ts";

type Props = { readonly open: OpenRoute; readonly subject: Subject };

/** Photos of a thing in the order they were taken, small until one is pressed; nothing where there are none. */
export function ThingPhotos({ open, subject }: Props) {
  const key = subjectKey(subject);
  const photos = [...open.route.photo.values()]
    .filter((one) => subjectKey(one) === key)
    .sort((a, b) => byText(a.atIso, b.atIso) || byText(a.id, b.id));
  if (photos.length === 0) return null;
  return (
    <div className="thing-photos">
      {photos.map((one) => (
        <ThingPhoto key={one.id} open={open} photo={one} />
      ))}
    </div>
  );
}

function ThingPhoto({ open, photo }: { readonly open: OpenRoute; readonly photo: Row<"photo"> }) {
  const [isLarge, setIsLarge] = useState(false);
  const url = useKeptUrl(open.routeId, photo.keptHash);
  const said = photoText(open.plant, photo);
  return (
    <figure className={isLarge ? "is-large" : undefined}>
      <button
        type="button"
        aria-expanded={isLarge}
        aria-label={words.photo(said)}
        title={isLarge ? undefined : words.larger}
        onClick={() => setIsLarge(!isLarge)}
      >
        {url !== null && <img src={url} alt="" width={photo.widthPx} height={photo.heightPx} />}
      </button>
      <figcaption>
        {said} <span className="quiet">{words.readBy(photo.by, photo.atIso.slice(0, 10))}</span>
      </figcaption>
    </figure>
  );
}
