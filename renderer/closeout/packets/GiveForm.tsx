import { type FormEvent, useId, useState } from "react";
import { splitRef } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { givePacket } from "./givePacket.ts";
import { packetWords } from "./words.ts";

/** Gives a crew a packet of the terminals chosen, or of all; Escape gives up. */
export function GiveForm({ open, onDone }: { readonly open: OpenRoute; readonly onDone: () => void }) {
  const session = useSession();
  const id = useId();
  const selection = useView((state) => state.selection);
  const all = [...open.route.terminal.keys()];
  const chosen = selection.map(splitRef).flatMap((one) => (one.table === "terminal" ? [one.id] : []));
  const lastBy = [...open.route.packet.values()].sort((a, b) => b.number - a.number)[0]?.by ?? "";
  const [values, setValues] = useState({ crew: "", by: lastBy, wavelengths: "", isAll: chosen.length === 0 });
  const [isAsked, setIsAsked] = useState(false);
  const terminalIds = values.isAll || chosen.length === 0 ? all : chosen;
  const wavelengthsNm = wavelengthsIn(values.wavelengths);
  const isMissing = values.crew.trim() === "" || values.by.trim() === "";
  const wrong = isMissing ? packetWords.needed : wavelengthsNm === null ? packetWords.wavelengthsWrong : null;
  const submit = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setIsAsked(true);
    if (wrong !== null || wavelengthsNm === null) return;
    const { crew, by } = values;
    if (await givePacket(session, { crew: crew.trim(), by: by.trim(), terminalIds, wavelengthsNm })) onDone();
  };
  const field = (key: "crew" | "by" | "wavelengths", name: string, isWrong: boolean) => (
    <label>
      {name}{" "}
      <input
        // the form was asked for by a press a moment ago
        // biome-ignore lint/a11y/noAutofocus: the hands are here already
        autoFocus={key === "crew"}
        value={values[key]}
        aria-invalid={isAsked && isWrong}
        aria-describedby={isAsked && wrong !== null ? `${id}-what` : undefined}
        onChange={(event) => setValues({ ...values, [key]: event.target.value })}
      />
    </label>
  );
  const which = (isAll: boolean, name: string) => (
    <label className="packet-which">
      <input type="radio" name={id} checked={values.isAll === isAll} onChange={() => setValues({ ...values, isAll })} />
      {name}
    </label>
  );
  return (
    <form
      className="signed"
      aria-label={packetWords.give}
      onSubmit={(event) => void submit(event)}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onDone();
      }}
    >
      <p className="quiet">{packetWords.why}</p>
      {field("crew", packetWords.crew, values.crew.trim() === "")}
      {field("by", packetWords.by, values.by.trim() === "")}
      <fieldset>
        <legend>{packetWords.terminals}</legend>
        {chosen.length > 0 && which(false, packetWords.chosen(chosen.length))}
        {which(true, packetWords.all(all.length))}
      </fieldset>
      {field("wavelengths", packetWords.wavelengths, wavelengthsNm === null)}
      <div className="revision-doings">
        <button type="submit" className="fix">
          {packetWords.write}
        </button>
        <button type="button" className="fix" onClick={onDone}>
          {packetWords.giveUp}
        </button>
      </div>
      {isAsked && wrong !== null && (
        <p id={`${id}-what`} role="alert">
          {wrong}
        </p>
      )}
    </form>
  );
}

/** Wavelengths with commas or spaces between them, nm; null where one is none. */
function wavelengthsIn(text: string): number[] | null {
  const found = text.split(/[,\s]+/).filter((one) => one !== "");
  const isWave = (one: number): boolean => Number.isInteger(one) && one >= 600 && one <= 1700;
  const waves = found.map(Number);
  return waves.length <= 6 && waves.every(isWave) ? waves : null;
}
