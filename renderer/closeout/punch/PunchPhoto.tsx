import { useState } from "react";
import type { Row } from "../../../core/model/tables.ts";
import { runCommand } from "../../app/edits.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { showFault } from "../../app/session.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession } from "../../app/useSession.ts";
import { FileButton } from "../../panels/FileButton.tsx";
import { signedNow } from "../closeoutHand.ts";
import { useKeptUrl } from "../useKeptUrl.ts";
import { closeoutWords, punchWords as words } from "../words.ts";
import { scaledPhoto } from "./scaledPhoto.ts";

type Props = { readonly open: OpenRoute; readonly item: Row<"punch">; readonly moment: "before" | "after" };

/** The photo of a punch item before or after it was mended; one of each, under an id made of the item's. */
export function PunchPhoto({ open, item, moment }: Props) {
  const session = useSession();
  const lookOnly = useLookOnly();
  const [problem, setProblem] = useState<string | null>(null);
  const photoId = `${item.id} ${moment}`;
  const photo = open.route.photo.get(photoId);
  const url = useKeptUrl(open.routeId, photo?.keptHash ?? null);
  const add = async ([file]: readonly File[]): Promise<void> => {
    const signed = signedNow(session);
    if (!file) return;
    if (signed.by === "") return setProblem(closeoutWords.byNeeded);
    const scaled = await scaledPhoto(file);
    setProblem(scaled ? null : words.noPicture);
    if (!scaled) return;
    const { bytesBase64, widthPx, heightPx } = scaled;
    const kept = await session.host.call("kept.keep", { routeId: open.routeId, bytesBase64 });
    if (!kept.ok) return showFault(session, kept.fault);
    const { kind, subjectId, port, alongId, what } = item;
    const caption = words.photoOf(words[moment], what);
    const size = { caption, widthPx, heightPx, keptHash: kept.value.hash };
    await runCommand(session, "photo.add", { photoId, kind, subjectId, port, alongId, moment, ...size, ...signed });
  };
  if (photo)
    return (
      <figure>
        {url !== null && <img src={url} alt={photo.caption} width={photo.widthPx} height={photo.heightPx} />}
        <figcaption>
          {words[moment]}{" "}
          <button
            type="button"
            className="fix"
            aria-label={`${words.removePhoto}: ${words[moment]}`}
            disabled={lookOnly !== null}
            onClick={() => void runCommand(session, "photo.remove", { photoId })}
          >
            {words.removePhoto}
          </button>
        </figcaption>
      </figure>
    );
  return (
    <div className="photo-add">
      <FileButton
        label={words.addPhoto(words[moment].toLowerCase())}
        accept="image/*"
        isOff={lookOnly !== null}
        onFiles={(files) => void add(files)}
      />
      {problem !== null && <span role="alert">{problem}</span>}
    </div>
  );
}
