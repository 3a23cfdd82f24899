import { type KeyboardEvent, type MouseEvent, useMemo, useState } from "react";
import { formatStation, parseStationM } from "../../../core/units/station.ts";
import { actionOf } from "../../app/actions.ts";
import { chooseAndShow, showPlace } from "../../app/look.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { ActionButton } from "../../panels/Bar.tsx";
import type { Picture } from "../paint.ts";
import { groundAt, screenX } from "../viewport.ts";
import { eastOfStation, type RulerPole, rowStations, ruledRow, stationAt } from "./rowStations.ts";
import type { PlacedRow, Straightened } from "./straightened.ts";
import { words } from "./words.ts";

/** Room one station's figures take along the ruler at the usual size of letters, px. */
const labelPx = 52;

/** The ruler over a straightened route: stations of the line one is at, a click goes there. */
export function StationRuler({ open, picture }: { readonly open: OpenRoute; readonly picture: Picture }) {
  const { straight } = picture.scene.places;
  const chosen = useView((state) => state.selection.at(-1));
  const row = useMemo(
    () => (straight ? ruledRow(open.plant, straight, chosen) : undefined),
    [open.plant, straight, chosen],
  );
  if (!straight || !row) return null;
  return <Ruler open={open} picture={picture} straight={straight} row={row} />;
}

type RulerProps = {
  readonly open: OpenRoute;
  readonly picture: Picture;
  readonly straight: Straightened;
  readonly row: PlacedRow;
};

function Ruler({ open, picture, straight, row }: RulerProps) {
  const session = useSession();
  const { view, units } = picture;
  const poles = useMemo(() => rowStations(open.plant, straight, row), [open.plant, straight, row]);
  const shown = shownPoles(poles, picture);
  const goTo = (pole: RulerPole): void => {
    chooseAndShow(session, [refKey("pole", pole.poleId)]);
    showPlace(session, { eastM: pole.eastM, northM: row.northM });
  };
  const goAlong = (event: MouseEvent<HTMLElement>): void => {
    if (event.target !== event.currentTarget) return;
    const { eastM } = groundAt(view, event.clientX - event.currentTarget.getBoundingClientRect().x, 0);
    if (stationAt(poles, eastM) !== null) showPlace(session, { eastM, northM: row.northM });
  };
  const walk = (event: KeyboardEvent<HTMLElement>): void => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    if (step === 0 || !(event.target instanceof HTMLElement)) return;
    event.preventDefault();
    const { target } = event;
    const buttons = [...event.currentTarget.querySelectorAll("button")];
    buttons.find((_, i) => buttons[i - step] === target)?.focus();
  };
  return (
    <div className="ruler">
      <div
        className="ruler-scale"
        role="toolbar"
        aria-label={words.ruler(row.name)}
        tabIndex={-1}
        onClick={goAlong}
        onKeyDown={walk}
      >
        {shown.map(({ pole, x, isLabelled }, i) => (
          <button
            key={`${pole.poleId} ${pole.stationM}`}
            type="button"
            tabIndex={i === 0 ? 0 : -1}
            className={isLabelled ? "ruler-pole is-labelled" : "ruler-pole"}
            style={{ left: x }}
            title={words.pole(pole.tag, formatStation(pole.stationM, units))}
            aria-label={words.pole(pole.tag, formatStation(pole.stationM, units))}
            onClick={() => goTo(pole)}
          >
            {isLabelled && formatStation(pole.stationM, units)}
          </button>
        ))}
      </div>
      <div className="ruler-go">
        <span>{words.along(row.name)}</span>
        <GoTo poles={poles} northM={row.northM} picture={picture} onPole={goTo} />
        <ActionButton action={actionOf("evenSpacing")} />
      </div>
    </div>
  );
}

type ShownPole = { readonly pole: RulerPole; readonly x: number; readonly isLabelled: boolean };

/** Poles in view; a station is written where it finds room beside the one before. */
function shownPoles(poles: readonly RulerPole[], { view, ink }: Picture): readonly ShownPole[] {
  let freeFrom = Number.NEGATIVE_INFINITY;
  let tickFrom = Number.NEGATIVE_INFINITY;
  return poles.flatMap((pole): ShownPole[] => {
    const x = screenX(view, pole.eastM);
    if (x < 0 || x > view.widthPx || x < tickFrom) return [];
    tickFrom = x + 4;
    const isLabelled = x >= freeFrom;
    if (isLabelled) freeFrom = x + labelPx * ink.letterFrac;
    return [{ pole, x, isLabelled }];
  });
}

type GoToProps = {
  readonly poles: readonly RulerPole[];
  readonly northM: number;
  readonly picture: Picture;
  readonly onPole: (pole: RulerPole) => void;
};

function GoTo({ poles, northM, picture, onPole }: GoToProps) {
  const session = useSession();
  const [text, setText] = useState("");
  const [trouble, setTrouble] = useState<string | null>(null);
  const go = (): void => {
    const wanted = text.trim().toLowerCase();
    const pole = poles.find(
      (one) => one.tag.toLowerCase() === wanted || formatStation(one.stationM, picture.units) === wanted,
    );
    const stationM = parseStationM(text, picture.units);
    const eastM = stationM === null ? null : eastOfStation(poles, stationM);
    if (pole) onPole(pole);
    else if (eastM !== null) showPlace(session, { eastM, northM });
    setTrouble(pole || eastM !== null ? null : words.nowhere(text.trim()));
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        go();
      }}
    >
      <input
        value={text}
        size={9}
        placeholder={words.go}
        aria-label={words.go}
        title={words.goHelp}
        aria-invalid={trouble !== null}
        aria-describedby={trouble === null ? undefined : "ruler-trouble"}
        onChange={(event) => setText(event.target.value)}
      />
      {trouble !== null && (
        <span id="ruler-trouble" role="alert">
          {trouble}
        </span>
      )}
    </form>
  );
}
