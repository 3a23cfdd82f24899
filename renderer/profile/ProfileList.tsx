import { memo } from "react";
import type { Profile, ProfileStep, StandingPole } from "../../core/plant/profile.ts";
import { spanClearance } from "../../core/plant/spanClearance.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { formatStation } from "../../core/units/station.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { titleOf } from "../panels/words.ts";
import { attachmentName, caseWords, profileWords } from "./words.ts";

const mostRows = 120;

type Props = { readonly open: OpenRoute; readonly profile: Profile };

/** The profile in words, for who cannot see it: poles with their attachments, spans with their least clearance. */
export const ProfileList = memo(function ProfileList({ open, profile }: Props) {
  const { poles, steps } = profile;
  const told = [
    ...poles.map((pole) => ({ key: pole.poleId, stationM: pole.stationM, words: () => poleWords(open, pole) })),
    ...steps.map((step) => ({
      key: step.span.spanId,
      stationM: step.startM + 0.001,
      words: () => spanWords(open, step),
    })),
  ].sort((a, b) => a.stationM - b.stationM);
  return (
    <section className="only-heard" id="described-profile" aria-label={profileWords.heardList}>
      <p>
        {poles.length} poles along {titleOf(open.plant, refKey(profile.way.table, profile.way.id))}
        {told.length > mostRows ? `, the first ${mostRows} poles and spans listed` : ""}.
      </p>
      <ul>
        {told.slice(0, mostRows).map(({ key, words }) => (
          <li key={key}>{words()}</li>
        ))}
      </ul>
    </section>
  );
});

function poleWords(open: OpenRoute, { tag, stationM, groundM, attachments }: StandingPole): string {
  const units = unitsOf(open);
  const heights = attachments.map((one) => `${attachmentName(one)} at ${formatLength(one.heightM, units, "height")}`);
  const ground = groundM === null ? [profileWords.groundUnknown] : [];
  return `Pole ${tag}, ${formatStation(stationM, units)}: ${[...ground, ...heights].join("; ")}`;
}

function spanWords(open: OpenRoute, { span: { spanId, why } }: ProfileStep): string {
  const { plant } = open;
  const title = titleOf(plant, refKey("span", spanId));
  const least = spanClearance(plant, spanId);
  if (!least) return `${title}: ${why ?? profileWords.unknownPlace}`;
  const { over, measuredM, condition } = least;
  const what = over.table === "span" ? profileWords.ground : titleOf(plant, refKey(over.table, over.id));
  const height = formatLength(measuredM, unitsOf(open), "clearance");
  return `${title}: ${profileWords.least(what)} ${height}, ${caseWords[condition].toLowerCase()}`;
}
