import { useMemo } from "react";
import type { Profile } from "../../core/plant/profile.ts";
import { spanClearance } from "../../core/plant/spanClearance.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { formatStation } from "../../core/units/station.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { titleOf } from "../panels/words.ts";
import { attachmentName, caseWords, profileWords } from "./words.ts";

const mostRows = 120;

/** The profile in words, for who cannot see it: poles with their attachments, spans with their least clearance. */
export function ProfileList({ open, profile }: { readonly open: OpenRoute; readonly profile: Profile }) {
  const lines = useMemo(() => describe(open, profile), [open, profile]);
  return (
    <section className="only-heard" id="described-profile" aria-label={profileWords.heardList}>
      <p>
        {profile.poles.length} poles along {titleOf(open.plant, refKey("cable", profile.cableId))}
        {lines.length > mostRows ? `, the first ${mostRows} poles and spans listed` : ""}.
      </p>
      <ul>
        {lines.slice(0, mostRows).map(({ key, words }) => (
          <li key={key}>{words}</li>
        ))}
      </ul>
    </section>
  );
}

function describe(open: OpenRoute, { poles, steps }: Profile) {
  const { plant } = open;
  const units = unitsOf(open);
  const ofPoles = poles.map(({ poleId, tag, stationM, groundM, attachments }) => {
    const heights = attachments.map((one) => `${attachmentName(one)} at ${formatLength(one.heightM, units, "height")}`);
    const ground = groundM === null ? [profileWords.groundUnknown] : [];
    return {
      key: poleId,
      stationM,
      words: `Pole ${tag}, ${formatStation(stationM, units)}: ${[...ground, ...heights].join("; ")}`,
    };
  });
  const ofSpans = steps.map(({ startM, span }) => {
    const least = spanClearance(plant, span.spanId);
    const over =
      least &&
      (least.over.table === "span" ? profileWords.ground : titleOf(plant, refKey(least.over.table, least.over.id)));
    const words = least
      ? `${profileWords.least(over ?? "")} ${formatLength(least.measuredM, units, "clearance")}, ${caseWords[least.condition].toLowerCase()}`
      : (span.why ?? profileWords.unknownPlace);
    return {
      key: span.spanId,
      stationM: startM + 0.001,
      words: `${titleOf(plant, refKey("span", span.spanId))}: ${words}`,
    };
  });
  return [...ofPoles, ...ofSpans].sort((a, b) => a.stationM - b.stationM);
}
