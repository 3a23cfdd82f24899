import { useRef, useState } from "react";
import { type Profile, stepAt } from "../../core/plant/profile.ts";
import { spanSag } from "../../core/plant/spanSag.ts";
import { fixedText } from "../../core/units/fixedText.ts";
import { formatForce } from "../../core/units/formatForce.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { tell, unitsOf } from "../app/session.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { useSession, useView } from "../app/useSession.ts";
import { tensionWords } from "./words.ts";

/** Stringing sag a strand may be given here, percent of the span. */
const [leastPercent, mostPercent, stepPercent] = [0.2, 5, 0.05];

/** How tight the strand of the span at hand is strung: changed here, the whole profile hangs anew at once. */
export function TensionField({ open, profile }: { readonly open: OpenRoute; readonly profile: Profile }) {
  const atM = useView((state) => state.profile.atM);
  const spanId = atM === null ? undefined : stepAt(profile, atM)?.span.spanId;
  const sectionId = spanId === undefined ? null : open.plant.rowOf("span", spanId).strandSectionId;
  if (spanId === undefined || sectionId === null) return <span className="quiet">{tensionWords.noStrand}</span>;
  return <OfSection key={sectionId} open={open} spanId={spanId} sectionId={sectionId} />;
}

type Props = { readonly open: OpenRoute; readonly spanId: string; readonly sectionId: string };

function OfSection({ open, spanId, sectionId }: Props) {
  const session = useSession();
  const lookOnly = useLookOnly();
  // changes that follow each other without leaving the field are one step of undo
  const gestureId = useRef<string | null>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const section = open.plant.rowOf("strandSection", sectionId);
  const percent = fixedText(section.stringingSagFrac * 100, 2);
  const sag = spanSag(open.plant, spanId);
  const change = (text: string): void => {
    const wanted = Number(text);
    if (!(wanted >= leastPercent && wanted <= mostPercent)) {
      tell(session, tensionWords.between);
      return;
    }
    gestureId.current ??= crypto.randomUUID();
    const stringingSagFrac = wanted / 100;
    const input = { table: "strandSection", id: sectionId, values: { stringingSagFrac } };
    void runCommand(session, "row.set", input, { gestureId: gestureId.current });
  };
  return (
    <label className="profile-tension">
      <span>{tensionWords.sagOf(section.name)}</span>
      <input
        type="number"
        min={leastPercent}
        max={mostPercent}
        step={stepPercent}
        value={typed ?? percent}
        disabled={lookOnly !== null}
        onChange={(event) => {
          setTyped(event.target.value);
          if (event.target.value !== "") change(event.target.value);
        }}
        onKeyDown={(event) => event.stopPropagation()}
        onBlur={() => {
          gestureId.current = null;
          setTyped(null);
        }}
      />
      <output>
        {sag.kind === "unknown" ? "" : tensionWords.strung(formatForce(sag.stringing.horizontalN, unitsOf(open)))}
      </output>
    </label>
  );
}
