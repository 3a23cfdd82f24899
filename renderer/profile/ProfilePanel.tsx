import { Maximize, X } from "lucide-react";
import { furtherCases } from "../../core/model/loadRows.ts";
import type { Profile } from "../../core/plant/profile.ts";
import { profileCases } from "../../core/plant/profileSpan.ts";
import { actionOf, perform } from "../app/actions.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { caseDashes } from "./drawLine.ts";
import { fitFrame } from "./frame.ts";
import { ProfilePaper } from "./ProfilePaper.tsx";
import { setProfile } from "./profileHand.ts";
import { profileWays, shownProfile } from "./profileNow.ts";
import { TensionField } from "./TensionField.tsx";
import { caseWords, profileWords } from "./words.ts";

/** The profile: along what, what each line means, and the drawing. */
export function ProfilePanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const way = useView((state) => state.profile.way);
  const profile = shownProfile(open, way);
  if (!profile) return <p className="empty">{profileWords.noWay}</p>;
  const ways = profileWays(open);
  return (
    <>
      <div className="profile-bar">
        <label>
          <span>{profileWords.way}</span>
          <select
            value={refKey(profile.way.table, profile.way.id)}
            onChange={({ target }) => {
              const chosen = ways[target.selectedIndex];
              if (chosen) setProfile(session, { way: chosen.ref, atM: null, attachmentId: null });
            }}
          >
            {ways.map(({ ref, name }) => (
              <option key={ref} value={ref}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <TensionField open={open} profile={profile} />
        <Key profile={profile} />
        <button
          type="button"
          className="act"
          aria-label={profileWords.fit}
          title={profileWords.fit}
          onClick={() => setProfile(session, { frame: fitFrame(session.view.getState().profile.frame, profile) })}
        >
          <Maximize size={16} aria-hidden="true" />
        </button>
        <button
          type="button"
          className="act"
          aria-label={profileWords.hide}
          title={profileWords.hide}
          onClick={() => void perform(session, actionOf("profile"))}
        >
          <X size={16} aria-hidden="true" />
        </button>
      </div>
      <ProfilePaper open={open} profile={profile} />
    </>
  );
}

/** Dashes of the cases the line is drawn in, those of clearance first. */
function Key({ profile }: { readonly profile: Profile }) {
  const further = furtherCases.filter((one) => profile.steps.some(({ span }) => span.line?.[one] !== undefined));
  return (
    <ul className="profile-key" aria-label={profileWords.key}>
      {[...profileCases, ...further].map((one) => (
        <li key={one}>
          <svg width={28} height={8} aria-hidden="true">
            <line
              x1={0}
              x2={28}
              y1={4}
              y2={4}
              stroke="currentColor"
              strokeWidth={one === "stringing" ? 2 : 1}
              strokeDasharray={caseDashes[one].join(" ")}
            />
          </svg>
          {caseWords[one]}
        </li>
      ))}
    </ul>
  );
}
