import { useState } from "react";
import { disputes } from "../../../core/closeout/disputes.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { FileButton } from "../../panels/FileButton.tsx";
import { DisputeCard } from "./DisputeCard.tsx";
import { GiveForm } from "./GiveForm.tsx";
import { writePacket } from "./givePacket.ts";
import { type Brought, takePackets } from "./takePackets.ts";
import { packetWords } from "./words.ts";

/** Packets given to crews and brought back, and the readings that disagree, each to be decided. */
export function PacketsPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const [isGiving, setIsGiving] = useState(false);
  const isBusy = useView(areEditsHeld);
  const allBrought = useView((state) => state.packetsBrought);
  const brought = allBrought.filter((one) => one.routeId === open.routeId);
  const lookOnly = useLookOnly();
  const { route } = open;
  const isBare = route.terminal.size === 0;
  const packets = [...route.packet.values()].sort((a, b) => b.number - a.number);
  const disputed = disputes(open.plant);
  const why = lookOnly ?? (isBare ? packetWords.noTerminal : null);
  return (
    <aside className="side revisions packets" aria-label={packetWords.title}>
      <h2>{packetWords.title}</h2>
      {isGiving ? (
        <GiveForm open={open} onDone={() => setIsGiving(false)} />
      ) : (
        <div className="revision-doings">
          <button
            type="button"
            className="fix"
            disabled={isBusy || why !== null}
            title={why ?? undefined}
            onClick={() => setIsGiving(true)}
          >
            {packetWords.give}
          </button>
          <TakeButton isOff={isBusy || lookOnly !== null} lookOnly={lookOnly} />
        </div>
      )}
      {brought.length > 0 && (
        <ol className="entries" aria-live="polite">
          {brought.map((one) => (
            <BroughtEntry key={one.id} brought={one} />
          ))}
        </ol>
      )}
      {disputed.length > 0 && (
        <>
          <h3>{packetWords.disagree(disputed.length)}</h3>
          <ul className="rivals">
            {disputed.map((one) => (
              <DisputeCard key={one.readingId} open={open} dispute={one} />
            ))}
          </ul>
        </>
      )}
      <h3>{packetWords.given}</h3>
      {packets.length === 0 && <p className="quiet">{packetWords.none}</p>}
      <ol className="entries">
        {packets.map(({ id, number, crew, terminalIds, wavelengthsNm, by, atIso }) => (
          <li key={id} className="entry">
            <b>{packetWords.head(number, crew, terminalIds.split(" ").length)}</b>
            {wavelengthsNm !== "" && <span>{packetWords.lightAlso(wavelengthsNm.replaceAll(" ", ", "))}</span>}
            <span className="quiet">{`${by}, ${atIso.slice(0, 10)}`}</span>
            <div className="revision-doings">
              <button
                type="button"
                className="fix"
                aria-label={packetWords.againOf(number)}
                disabled={isBusy}
                onClick={() => void writePacket(session, id)}
              >
                {packetWords.again}
              </button>
            </div>
          </li>
        ))}
      </ol>
    </aside>
  );
}

function TakeButton({ isOff, lookOnly }: { readonly isOff: boolean; readonly lookOnly: string | null }) {
  const session = useSession();
  return (
    <FileButton
      label={packetWords.bring}
      accept=".json"
      isMany
      isOff={isOff}
      title={lookOnly ?? packetWords.bringWhy}
      onFiles={(files) => void takePackets(session, files)}
    />
  );
}

function BroughtEntry({ brought }: { readonly brought: Brought }) {
  const { number, crew, takenCount, photoCount, alreadyCount, rivalCount, refused, fileName } = brought;
  return (
    <li className="entry">
      <b>{packetWords.taken(number, crew)}</b>
      <span>{packetWords.counts(takenCount, photoCount, alreadyCount, rivalCount)}</span>
      <span className="quiet">{fileName}</span>
      {refused.length > 0 && (
        <>
          <strong>{packetWords.refused(refused.length)}</strong>
          <ul className="packet-refused">
            {refused.map((one, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes
              <li key={index}>
                {one.what} <span className="quiet">{one.why}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </li>
  );
}
