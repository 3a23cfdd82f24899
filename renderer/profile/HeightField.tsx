import type { Profile } from "../../core/plant/profile.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { DiagramField } from "../tools/DiagramField.tsx";
import { keepHeight, letProfileGo, setProfile, typedHeight } from "./profileHand.ts";
import { pointOnProfile } from "./profileHit.ts";
import { attachmentName, profileWords } from "./words.ts";

const [fieldWidthPx, fieldHeightPx] = [240, 80];

/** Where a person types how high an attachment is. */
export function HeightField({ open, profile }: { readonly open: OpenRoute; readonly profile: Profile }) {
  const session = useSession();
  const { typed, attachmentId, frame } = useView((state) => state.profile);
  const attachment = attachmentId === null ? undefined : open.route.attachment.get(attachmentId);
  if (typed === null || !attachment) return null;
  const [x, y] = pointOnProfile(open.plant, { profile, frame }, `attachment/${attachment.id}`) ?? [0, 0];
  const height = typedHeight(typed, unitsOf(open));
  const { widthPx, heightPx } = frame;
  return (
    <DiagramField
      label={profileWords.heightField(attachmentName(attachment))}
      value={typed}
      problem={height.ok ? null : height.what}
      leftPx={Math.max(0, Math.min(widthPx - fieldWidthPx, x + 14))}
      topPx={Math.max(0, Math.min(heightPx - fieldHeightPx, y - 30))}
      isChosen
      onChange={(text) => setProfile(session, { typed: text })}
      onKeep={async () => {
        await keepHeight(session);
        if (session.view.getState().profile.typed === null) focusProfile();
      }}
      onGiveUp={() => {
        letProfileGo(session);
        focusProfile();
      }}
    />
  );
}

function focusProfile(): void {
  document.querySelector<HTMLElement>("[data-profile]")?.focus();
}
