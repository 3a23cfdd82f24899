import { useState } from "react";
import { thingName } from "../../../core/closeout/thingName.ts";
import { subjectAstray } from "../../../core/edits/subjects.ts";
import type { Row } from "../../../core/model/tables.ts";
import { chooseAndShow } from "../../app/look.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { setCloseout } from "../closeoutHand.ts";
import { type PunchFilter, punchFilters } from "../closeoutView.ts";
import { punchWords as words } from "../words.ts";
import { PunchForm } from "./PunchForm.tsx";
import { PunchItem } from "./PunchItem.tsx";
import { chosenThing, shownRef } from "./punchSubject.ts";

/** What is to be mended before the route is accepted: by number, with who does it until when. */
export function PunchList({ open }: { readonly open: OpenRoute }) {
  const { punchFilter, punchId } = useView((state) => state.closeout);
  const items = [...open.route.punch.values()].sort((a, b) => a.number - b.number);
  const shown = items.filter((one) => isShownUnder(punchFilter, one));
  const chosen = punchId === null ? undefined : open.route.punch.get(punchId);
  return (
    <div className={chosen ? "closeout-desk is-entering" : "closeout-desk"}>
      <div className="board-side">
        <div className="punch-head">
          <Filter />
          <AddByHand open={open} />
        </div>
        {items.length === 0 && <p className="empty">{words.none}</p>}
        {items.length > 0 && shown.length === 0 && <p className="empty">{words.noneSo}</p>}
        {shown.length > 0 && <Items open={open} items={shown} />}
      </div>
      {chosen && <PunchItem key={chosen.id} open={open} item={chosen} />}
    </div>
  );
}

function isShownUnder(filter: PunchFilter, { doneIso }: Row<"punch">): boolean {
  return filter === "all" || (doneIso === "") === (filter === "open");
}

function isOverdue({ doneIso, dueIso }: Row<"punch">): boolean {
  return doneIso === "" && dueIso !== "" && dueIso < new Date().toISOString().slice(0, 10);
}

function Filter() {
  const session = useSession();
  const filter = useView((state) => state.closeout.punchFilter);
  return (
    <fieldset className="board-filter">
      <legend>{words.filter}</legend>
      {punchFilters.map((one) => (
        <label key={one}>
          <input
            type="radio"
            name="punch-filter"
            checked={one === filter}
            onChange={() => setCloseout(session, { punchFilter: one })}
          />
          {words.filters[one]}
        </label>
      ))}
    </fieldset>
  );
}

function AddByHand({ open }: { readonly open: OpenRoute }) {
  const [isAdding, setIsAdding] = useState(false);
  const selection = useView((state) => state.selection);
  const lookOnly = useLookOnly();
  const subject = chosenThing(open.plant, selection);
  const name = subject ? thingName(open.plant, subject) : "";
  if (isAdding && subject)
    return <PunchForm key={name} subject={subject} name={name} onDone={() => setIsAdding(false)} />;
  return (
    <>
      <button
        type="button"
        className="fix"
        disabled={!subject || lookOnly !== null}
        title={lookOnly ?? undefined}
        onClick={() => setIsAdding(true)}
      >
        {subject ? words.addFor(name) : words.add}
      </button>
      {!subject && <span className="quiet">{words.chooseFirst}</span>}
    </>
  );
}

function Items({ open, items }: { readonly open: OpenRoute; readonly items: readonly Row<"punch">[] }) {
  const session = useSession();
  const chosenId = useView((state) => state.closeout.punchId);
  const choose = (item: Row<"punch">): void => {
    setCloseout(session, { punchId: item.id });
    if (!subjectAstray(open.route, item)) chooseAndShow(session, [shownRef(open.plant, item)]);
  };
  return (
    <div className="punch-items">
      <table aria-label={words.list}>
        <thead>
          <tr>
            <th scope="col" className="figure">
              {words.number}
            </th>
            <th scope="col">{words.place}</th>
            <th scope="col">{words.what}</th>
            <th scope="col">{words.assigned}</th>
            <th scope="col">{words.due}</th>
            <th scope="col">{words.done}</th>
          </tr>
        </thead>
        <tbody>
          {items.map((item) => (
            <tr key={item.id} className={item.id === chosenId ? "is-active" : undefined}>
              <td className="figure">{item.number}</td>
              <td>
                <button type="button" className="ref" data-punch={item.number} onClick={() => choose(item)}>
                  {thingName(open.plant, item)}
                </button>
              </td>
              <td>{item.what}</td>
              <td>{item.assignedTo}</td>
              <td>
                {item.dueIso}
                {isOverdue(item) && <b> {words.overdue}</b>}
              </td>
              <td>{item.doneIso === "" ? words.open : item.doneIso.slice(0, 10)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
