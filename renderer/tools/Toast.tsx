import { useEffect, useState } from "react";
import { undo } from "../app/edits.ts";
import { useSession, useView } from "../app/useSession.ts";
import { CloseButton } from "../panels/CloseButton.tsx";
import { toolWords } from "./words.ts";

/** Long enough to read and reach the button; it waits while the pointer or the focus is on it, ms. */
const shownMs = 10_000;

/** What a removal took, with the way back. */
export function Toast() {
  const session = useSession();
  const toast = useView((state) => state.toast);
  const [isHeld, setHeld] = useState(false);
  useEffect(() => {
    if (toast === null || isHeld) return;
    const timer = setTimeout(() => session.view.setState({ toast: null }), shownMs);
    return () => clearTimeout(timer);
  }, [toast, isHeld, session]);
  const putAway = (): void => {
    setHeld(false);
    session.view.setState({ toast: null });
  };
  if (toast === null) return null;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: hover and focus only make it wait
    <div
      className="toast"
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <output>{toast}</output>
      <button
        type="button"
        className="act is-written"
        onClick={() => {
          putAway();
          void undo(session);
        }}
      >
        {toolWords.undo}
      </button>
      <CloseButton name={toolWords.putAway} onPress={putAway} />
    </div>
  );
}
