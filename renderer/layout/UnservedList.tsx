import { type KeyboardEvent, useRef } from "react";
import type { UnservedUnit } from "../../core/model/tables.ts";
import { chooseAndShow } from "../app/look.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { fullScalePxPerM } from "../canvas/viewport.ts";
import { layoutWords as words } from "./words.ts";

const refOf = (one: UnservedUnit) => refKey("livingUnit", one.livingUnitId);

/** Whom the layout could not serve and why, one after the other: stepping shows each on the diagram. */
export function UnservedList({ open: { route, plant } }: { readonly open: OpenRoute }) {
  const session = useSession();
  const selection = useView((state) => state.selection);
  const list = useRef<HTMLOListElement>(null);
  const left = [...route.unservedUnit.values()].filter(
    (one) => plant.where("drop", "livingUnitId", one.livingUnitId).length === 0,
  );
  const at = selection.length === 1 ? left.findIndex((one) => refOf(one) === selection[0]) : -1;
  const show = (position: number, takesFocus: boolean): void => {
    const wanted = left[(position + left.length) % left.length];
    if (!wanted) return;
    chooseAndShow(session, [refOf(wanted)], fullScalePxPerM);
    const button = list.current?.querySelectorAll("button")[left.indexOf(wanted)];
    button?.scrollIntoView({ block: "nearest" });
    if (takesFocus) button?.focus();
  };
  const walk = (event: KeyboardEvent): void => {
    const to = { ArrowDown: at + 1, ArrowUp: Math.max(0, at) - 1, Home: 0, End: -1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    show(to, true);
  };
  if (left.length === 0) return <p className="quiet">{words.everyone}</p>;
  return (
    <>
      <div className="layout-head">
        <h3>{words.unserved(left.length)}</h3>
        <button type="button" className="fix" onClick={() => show(Math.max(0, at) - 1, false)}>
          {words.previous}
        </button>
        <button type="button" className="fix" onClick={() => show(at + 1, false)}>
          {words.next}
        </button>
      </div>
      <ol ref={list} className="unserved" aria-label={words.unservedList} onKeyDown={walk}>
        {left.map((one, position) => (
          <li key={one.id}>
            <button
              type="button"
              aria-current={position === at ? "true" : undefined}
              tabIndex={position === Math.max(0, at) ? 0 : -1}
              onClick={() => show(position, false)}
            >
              <b>{route.livingUnit.get(one.livingUnitId)?.address}</b>
              <span className="place">{words.kindOf(one.kind)}</span>
              <span>{one.reason}</span>
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}
