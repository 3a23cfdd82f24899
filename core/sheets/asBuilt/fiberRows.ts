import { cableSheath } from "../../closeout/sheathRead.ts";
import { thingName } from "../../closeout/thingName.ts";
import { eventsOf } from "../../closeout/traceOnRoute.ts";
import { cablesInOrder } from "../../plant/cableOrder.ts";
import type { Plant } from "../../plant/plant.ts";
import { byText } from "../../plant/sorting.ts";
import { figure, lengthCell } from "../paper/figure.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import type { TableRow } from "../paper/tableRow.ts";
import type { Schedule } from "../schedule/schedule.ts";

/** Sheath used between marks that are believed, cable by cable, and marks that are not believed. */
export function sheathSchedule(plant: Plant): Schedule {
  const system = plant.settings().unitSystem;
  const unit = lengthUnit(system);
  const rows = cablesInOrder(plant).flatMap(({ id, name }): readonly TableRow[] => {
    const { sections, doubted, remainderM } = cableSheath(plant, id);
    if (sections.length === 0 && doubted.length === 0) return [];
    const left = remainderM === null ? "" : `; ${lengthCell(remainderM, system).value} ${unit} left on the reel`;
    return [
      { group: `${name}${left}`, of: name },
      ...sections.map(({ from, to, usedM, drawnM, moreM, isAsDrawn }) => ({
        cells: [
          from,
          to,
          lengthCell(drawnM, system),
          lengthCell(usedM, system),
          lengthCell(moreM, system),
          isAsDrawn ? "within the limit" : "◆ outside the limit",
        ],
      })),
      ...doubted.map(({ place, figure: read, perhaps }) => ({
        note: `◆ The mark ${read} at ${place} does not fit those before and after it${perhaps === null ? "" : `; perhaps ${perhaps}`}.`,
      })),
    ];
  });
  return {
    name: "Sheath marks",
    grouped: "Cable",
    columns: [
      { heading: "From", share: 56 },
      { heading: "To", share: 56 },
      { over: "Sheath", heading: "drawn", unit, share: 26, align: "right" },
      { over: "Sheath", heading: "used", unit, share: 26, align: "right" },
      { heading: "More than drawn", unit, share: 26, align: "right" },
      { heading: "Verdict", share: 44 },
    ],
    rows,
    notes: [],
  };
}

/** Every trace kept, with the events its file tells. */
export function traceSchedule(plant: Plant): Schedule {
  const system = plant.settings().unitSystem;
  const rows = plant
    .all("trace")
    .map((id) => plant.rowOf("trace", id))
    .sort((a, b) => byText(a.fileName, b.fileName) || byText(a.id, b.id))
    .flatMap((one): readonly TableRow[] => {
      const cable = one.cableId === null ? undefined : plant.row("cable", one.cableId);
      const of = cable && one.fiber !== null ? `${cable.name} fiber ${one.fiber}` : "◆ of no fiber yet";
      const total = one.totalLossDb === null ? "" : `; ${one.totalLossDb.toFixed(2)} dB in all`;
      const heading = `${one.fileName}: ${of}, ${one.wavelengthNm} nm from the ${one.fromEnd} end${total}`;
      return [
        { group: heading, of: one.fileName },
        ...eventsOf(plant, one.id).map((event) => ({
          cells: [
            figure(event.number, 0),
            lengthCell(event.atM, system),
            figure(event.lossDb, 2),
            event.reflectanceDb === null ? "" : figure(event.reflectanceDb, 1),
            figure(event.slopeDbPerKm, 3),
            event.ends ? "end of the fiber" : event.reflects ? "reflects" : "",
          ],
        })),
      ];
    });
  return {
    name: "Traces",
    grouped: "File",
    columns: [
      { heading: "Event", share: 16, align: "right" },
      { heading: "From the instrument", unit: lengthUnit(system), share: 34, align: "right" },
      { heading: "Loss", unit: "dB", share: 22, align: "right" },
      { heading: "Reflectance", unit: "dB", share: 26, align: "right" },
      { heading: "Fiber before it", unit: "dB/km", share: 30, align: "right" },
      { heading: "What", share: 46 },
    ],
    rows,
    notes: [
      "Events as the instrument's file tells them; what is over its limit or was not found is among the findings.",
    ],
  };
}

/** Every photo, by the thing it shows; the pictures themselves stand behind the report. */
export function photoSchedule(plant: Plant): Schedule {
  const rows = plant
    .all("photo")
    .map((id) => plant.rowOf("photo", id))
    .map((one) => ({ one, name: thingName(plant, one) }))
    .sort((a, b) => byText(a.name, b.name) || byText(a.one.id, b.one.id))
    .map(({ one, name }) => ({
      cells: [name, one.moment, one.caption, one.by, one.atIso.slice(0, 10), one.keptHash],
    }));
  return {
    name: "Photos",
    grouped: "",
    columns: [
      { heading: "Of", share: 56 },
      { heading: "When", share: 20 },
      { heading: "Caption", share: 80 },
      { heading: "By", share: 34 },
      { heading: "On", share: 24 },
      { heading: "SHA-256 of the picture", share: 108 },
    ],
    rows,
    notes: ["The pictures stand behind this report; a delivery holds them beside it too, each under its hash."],
  };
}
