import { useRef } from "react";
import { carryOut } from "../app/edits.ts";
import { base64Of } from "../app/importing.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useLogo } from "../app/useLogo.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { useSession } from "../app/useSession.ts";
import { drawingWords } from "./drawingWords.ts";

/** The company's logo as it is, and the way to another or to none. */
export function LogoField(props: {
  readonly open: OpenRoute;
  /** Of the button; the name before it has the same and `-name`. */
  readonly id: string;
  /** The logo as the settings keep it; empty for none. */
  readonly logo: string;
  readonly onRemove: () => void;
}) {
  const { open, id, logo, onRemove } = props;
  const { routeId } = open;
  const session = useSession();
  const lookOnly = useLookOnly();
  const chooser = useRef<HTMLInputElement>(null);
  const href = useLogo(routeId, logo);
  const take = async (file: File): Promise<void> => {
    const contentBase64 = await base64Of(file);
    await carryOut(session, "", () => session.host.call("logo.take", { routeId, fileName: file.name, contentBase64 }));
  };
  const off = { disabled: lookOnly !== null, title: lookOnly ?? undefined };
  return (
    <div className="logo-field">
      {href === null ? (
        <p className="quiet">{drawingWords.noneYet}</p>
      ) : (
        <img src={href} alt={drawingWords.logoShown} />
      )}
      <button
        id={id}
        type="button"
        className="fix"
        aria-labelledby={`${id}-name ${id}`}
        {...off}
        onClick={() => chooser.current?.click()}
      >
        {logo === "" ? drawingWords.chooseLogo : drawingWords.otherLogo}
      </button>
      {logo !== "" && (
        <button type="button" className="fix" {...off} onClick={onRemove}>
          {drawingWords.noLogo}
        </button>
      )}
      <input
        ref={chooser}
        type="file"
        accept=".png,.jpg,.jpeg,.svg"
        aria-label={drawingWords.logoFile}
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file) void take(file);
          event.target.value = "";
        }}
      />
    </div>
  );
}
