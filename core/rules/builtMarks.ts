import { cableOfMark, cableSheath } from "../closeout/sheathRead.ts";
import { takenAgain } from "../closeout/takenAgain.ts";
import type { Row } from "../model/tables.ts";
import { cablePath } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { companySetting, type Fix, type Hit, type Rule, type Subject } from "./rule.ts";

export const builtMarks: Rule = {
  id: "built-marks",
  title: "The sheath's own marks agree with the drawn cable",
  compares:
    "The sheath used between two marks read along a cable, against the drawn length with the tolerance of the settings; and each mark, against those before and after it.",
  severity: "warning",
  basis: companySetting("markToleranceFrac"),
  each: "reading",
  *check(plant, id) {
    const reading = plant.rowOf("reading", id);
    const cableId = cableOfMark(plant, reading);
    if (cableId === null || reading.value === null) return;
    const sheath = cableSheath(plant, cableId);
    const place = sheath.read.find((one) => one.readingId === id)?.place;
    const doubt = sheath.doubted.find((one) => one.place === place);
    const section = sheath.sections.find((one) => one.to === place && !one.isAsDrawn);
    const subjects: readonly Subject[] = [
      { table: "reading", id },
      ...placeSubject(reading),
      { table: "cable", id: cableId },
    ];
    const cableName = plant.rowOf("cable", cableId).name;
    if (doubt) yield doubtHit(reading, doubt, { subjects, cableName });
    if (section)
      yield {
        subjects,
        message: `Between ${section.from} and ${section.to} ${section.moreM > 0 ? "more" : "less"} of cable ${cableName} was used than drawn.`,
        measured: section.usedM,
        limit: section.drawnM,
        unit: "m",
        fixes: spanFix(plant, cableId, section),
      };
  },
};

type About = { readonly subjects: readonly Subject[]; readonly cableName: string };
type Doubt = { readonly place: string; readonly figure: number; readonly perhaps: number | null };

function doubtHit(reading: Row<"reading">, doubt: Doubt, { subjects, cableName }: About): Hit {
  const { place, figure, perhaps } = doubt;
  return {
    subjects,
    message: `The mark ${figure} of cable ${cableName} at ${place} does not fit those before and after it${perhaps === null ? "" : `; two digits exchanged, it would be ${perhaps}`}.`,
    measured: null,
    limit: null,
    unit: "",
    fixes:
      perhaps === null
        ? []
        : [
            {
              label: `Take it as ${perhaps}`,
              command: "reading.take",
              input: { ...takenAgain(reading), value: perhaps },
            },
          ],
  };
}

function placeSubject({ kind, subjectId }: Row<"reading">): readonly Subject[] {
  return kind === "pole" || kind === "terminal" || kind === "closure" ? [{ table: kind, id: subjectId }] : [];
}

type Section = { readonly from: string; readonly to: string; readonly moreM: number };

/** The one whole span between two marks as long as the sheath says: it may have been measured wrong. */
function spanFix(plant: Plant, cableId: string, { from, to, moreM }: Section): readonly Fix[] {
  const { read } = cableSheath(plant, cableId);
  const [fromM, toM] = [from, to].map((place) => read.find((one) => one.place === place)?.stationM ?? 0);
  const within = cablePath(plant, cableId).steps.filter(
    ({ startM, lengthM }) => startM + lengthM / 2 > (fromM ?? 0) && startM + lengthM / 2 < (toM ?? 0),
  );
  const [only, ...more] = within;
  const lengthM = (only?.lengthM ?? 0) + moreM;
  if (!only || more.length > 0 || !(lengthM > 0)) return [];
  return [
    {
      label: "Draw the span as long as the sheath says",
      command: "span.measure",
      input: { spanId: only.spanId, lengthM },
    },
  ];
}
