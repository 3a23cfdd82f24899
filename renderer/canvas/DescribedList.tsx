import { useEffect, useMemo, useState } from "react";
import type { Plant } from "../../core/plant/plant.ts";
import { refKey } from "../app/ref.ts";
import { hintOf, titleOf } from "../panels/words.ts";
import type { Picture } from "./paint.ts";
import { shownBox } from "./viewport.ts";

const mostRows = 120;
const settleMs = 250;

/** The diagram in words, for who cannot see it: the poles and terminals in view, from west to east. */
export function DescribedList({ plant, picture }: { readonly plant: Plant; readonly picture: Picture }) {
  const settled = useSettled(picture);
  const rows = useMemo(() => describe(plant, settled), [plant, settled]);
  return (
    <section className="only-heard" id="described-route" aria-label="What the diagram shows">
      <p>
        {rows.total} poles and terminals in view{rows.total > mostRows ? `, the first ${mostRows} listed` : ""}.
      </p>
      <ul>
        {rows.lines.map(({ ref, words }) => (
          <li key={ref}>{words}</li>
        ))}
      </ul>
    </section>
  );
}

/** The picture once the view has come to rest: nobody is told of what only flies past. */
function useSettled(picture: Picture): Picture {
  const [settled, setSettled] = useState(picture);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(picture), settleMs);
    return () => clearTimeout(timer);
  }, [picture]);
  return settled;
}

function describe(plant: Plant, { scene, view, units }: Picture) {
  const box = shownBox(view, 0);
  const poles = scene.poles.index.within(box).map((i) => ({
    ref: refKey("pole", scene.poles.ids[i] ?? ""),
    eastM: scene.poles.eastM[i] ?? 0,
  }));
  const terminals = scene.terminals.index.within(box).flatMap((i) => {
    const mark = scene.terminals.marks[i];
    return mark ? [{ ref: refKey("terminal", mark.id), eastM: mark.eastM }] : [];
  });
  const all = [...poles, ...terminals].sort((a, b) => a.eastM - b.eastM);
  const lines = all.slice(0, mostRows).flatMap(({ ref }) => {
    const hint = hintOf(plant, ref, units);
    const title = titleOf(plant, ref);
    return [{ ref, words: hint === "" ? title : `${title}: ${hint}` }];
  });
  return { total: all.length, lines };
}
