import { type CableSheath, cableSheath } from "../../../core/closeout/sheathRead.ts";
import { takenAgain } from "../../../core/closeout/takenAgain.ts";
import { cablesInOrder } from "../../../core/plant/cableOrder.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { runCommand } from "../../app/edits.ts";
import { chooseAndShow } from "../../app/look.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { Facts } from "../../panels/Facts.tsx";
import { setCloseout } from "../closeoutHand.ts";
import { sheathWords as words } from "../words.ts";

/** The sheath's own marks along a cable: used, stored, missing; marks in doubt; what is left on the reel. */
export function SheathPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const wantedId = useView((state) => state.closeout.cableId);
  const cables = cablesInOrder(open.plant);
  const cable = cables.find((one) => one.id === wantedId) ?? cables[0];
  if (!cable) return <p className="empty">{words.noCable}</p>;
  const sheath = cableSheath(open.plant, cable.id);
  return (
    <div className="sheath">
      <label>
        {words.cable}{" "}
        <select
          value={cable.id}
          onChange={(event) => {
            setCloseout(session, { cableId: event.target.value });
            chooseAndShow(session, [refKey("cable", event.target.value)]);
          }}
        >
          {cables.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      {sheath.counts !== null && <span className="quiet"> {words.counts[sheath.counts]}</span>}
      {sheath.read.length === 0 && <p className="empty">{words.none}</p>}
      {sheath.read.length === 1 && <p className="empty">{words.one}</p>}
      <Doubts open={open} sheath={sheath} />
      {sheath.sections.length > 0 && <Sections open={open} sheath={sheath} />}
      {sheath.sections.length > 0 && <Reel open={open} sheath={sheath} reelLengthM={cable.reelLengthM} />}
    </div>
  );
}

type Props = { readonly open: OpenRoute; readonly sheath: CableSheath };

function Sections({ open, sheath }: Props) {
  const units = unitsOf(open);
  const length = (valueM: number) => formatLength(valueM, units, "span");
  return (
    <table aria-label={words.sections}>
      <thead>
        <tr>
          <th scope="col">{words.from}</th>
          <th scope="col">{words.to}</th>
          <th scope="col" className="figure">
            {words.used}
          </th>
          <th scope="col" className="figure">
            {words.drawn}
          </th>
          <th scope="col">{words.more}</th>
        </tr>
      </thead>
      <tbody>
        {sheath.sections.map(({ from, to, usedM, drawnM, moreM, isAsDrawn }) => (
          <tr key={to} className={isAsDrawn ? undefined : "is-deviating"}>
            <td>{from}</td>
            <td>{to}</td>
            <td className="figure">{length(usedM)}</td>
            <td className="figure">{length(drawnM)}</td>
            <td>
              {isAsDrawn ? words.asDrawn : moreM > 0 ? words.stored(length(moreM)) : words.missing(length(-moreM))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Doubts({ open, sheath }: Props) {
  const session = useSession();
  const lookOnly = useLookOnly();
  if (sheath.doubted.length === 0) return null;
  const take = (place: string, value: number): void => {
    const mark = sheath.read.find((one) => one.place === place);
    const reading = mark && open.route.reading.get(mark.readingId);
    if (!reading) return;
    void runCommand(session, "reading.take", { ...takenAgain(reading), value });
  };
  return (
    <>
      <h3>{words.doubted}</h3>
      <ul className="sheath-doubts">
        {sheath.doubted.map(({ place, figure, perhaps }) => (
          <li key={place}>
            {words.doubt(place, figure)}
            {perhaps !== null && (
              <>
                ; {words.perhaps(perhaps)}{" "}
                <button
                  type="button"
                  className="fix"
                  disabled={lookOnly !== null}
                  title={lookOnly ?? undefined}
                  onClick={() => take(place, perhaps)}
                >
                  {words.take(perhaps)}
                </button>
              </>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

function Reel({ open, sheath, reelLengthM }: Props & { readonly reelLengthM: number }) {
  const length = (valueM: number) => formatLength(valueM, unitsOf(open), "span");
  return (
    <Facts
      facts={[
        [words.reel, length(reelLengthM)],
        [words.usedAll, length(sheath.usedM)],
        [words.remainder, sheath.remainderM === null ? words.remainderUnknown : length(sheath.remainderM)],
      ]}
    />
  );
}
