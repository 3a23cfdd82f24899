import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { machine } from "../app/machine.ts";
import { Overlay } from "../app/Overlay.tsx";
import { useSession, useView } from "../app/useSession.ts";
import type { Offer } from "./offers.ts";
import { useOffers } from "./useOffers.ts";
import { words } from "./words.ts";

const mostRecent = 12;

/** The one field that finds everything: rows of the route, sheets, actions, settings, help. */
export function Finder() {
  const { view } = useSession();
  const isOpen = useView((state) => state.overlay === "finder");
  if (!isOpen) return null;
  return (
    <Overlay
      label={words.title}
      className="finder"
      onClose={() => view.setState({ overlay: null })}
      onHelp={() => view.setState({ overlay: null, helpPage: "finder", helpSought: "" })}
    >
      <Find />
    </Overlay>
  );
}

function Find() {
  const session = useSession();
  const [typed, setTyped] = useState("");
  const [active, setActive] = useState(0);
  const offers = useOffers(typed, true);
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const at = Math.min(active, offers.length - 1);
  useEffect(() => {
    list.current?.children[at]?.scrollIntoView({ block: "nearest" });
  }, [at]);

  const take = (offer: Offer | undefined): void => {
    if (!offer || offer.blocked !== null) return;
    session.view.setState({ overlay: null });
    machine.setState(({ recent }) => ({
      recent: [offer.key, ...recent.filter((one) => one !== offer.key)].slice(0, mostRecent),
    }));
    offer.go(session);
  };
  const walk = (event: KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 }[event.key];
    if (event.key === "Enter") take(offers[at]);
    else if (step === undefined) return;
    else setActive(Math.max(0, Math.min(offers.length - 1, at + step)));
    event.preventDefault();
  };
  return (
    <>
      <input
        type="text"
        role="combobox"
        aria-expanded="true"
        aria-controls={`${id}-list`}
        aria-activedescendant={offers.length > 0 ? `${id}-${at}` : undefined}
        aria-autocomplete="list"
        aria-label={words.field}
        placeholder={words.field}
        autoComplete="off"
        spellCheck={false}
        value={typed}
        // biome-ignore lint/a11y/noAutofocus: the box is opened in order to type
        autoFocus
        onChange={(event) => {
          setTyped(event.target.value);
          setActive(0);
        }}
        onKeyDown={walk}
      />
      <div className="offers" role="listbox" id={`${id}-list`} aria-label={words.list} ref={list} tabIndex={-1}>
        {offers.map((offer, i) => (
          <OfferLine key={offer.key} id={`${id}-${i}`} offer={offer} isActive={i === at} onTake={() => take(offer)} />
        ))}
      </div>
      <p className="quiet" role="status">
        {offers.length === 0 ? words.none(typed) : typed === "" ? words.hint : words.count(offers.length)}
      </p>
    </>
  );
}

function OfferLine(props: {
  readonly id: string;
  readonly offer: Offer;
  readonly isActive: boolean;
  readonly onTake: () => void;
}) {
  const { id, offer, isActive, onTake } = props;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the field above holds the focus and takes the keys for its list
    <div
      id={id}
      role="option"
      tabIndex={-1}
      className="offer"
      data-offer={offer.key}
      aria-selected={isActive}
      aria-disabled={offer.blocked !== null}
      onClick={onTake}
    >
      <span className="offer-kind">{offer.kind}</span>
      <span className="offer-name">{offer.name}</span>
      <span className="offer-hint">{offer.blocked ?? offer.hint}</span>
      {offer.shortcut !== "" && <kbd>{offer.shortcut}</kbd>}
    </div>
  );
}
