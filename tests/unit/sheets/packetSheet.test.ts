import { expect, test } from "vitest";
import { readingId } from "../../../core/closeout/subject.ts";
import type { Row } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { packetSheet } from "../../../core/sheets/packet/packetSheet.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const packet: Row<"packet"> = {
  id: "packet-1",
  number: 1,
  crew: "North",
  terminalIds: "terminal-1 terminal-gone",
  wavelengthsNm: "1550",
  by: "Office",
  atIso: "2030",
};
const written = { revision: "Revision A", by: "Office", atIso: "2030-05-01T08:00:00Z" };
const offset = { kind: "terminal", subjectId: "terminal-1", port: 0, alongId: "" } as const;

test("a packet asks of each terminal for where it hangs, its coil and marks, its pole, light at every port and its houses", () => {
  const { cards } = packetSheet(openPlant(smallRoute()), packet, written);
  const [card] = cards;
  expect(cards).toHaveLength(1);
  const asked = card?.groups.flatMap((one) => one.asked) ?? [];
  const kinds = new Set(asked.map((one) => one.what));
  expect([...kinds].sort()).toEqual(
    ["offset", "note", "height", "mark", "continuity", "resistance", "power", "houseTag", "portOfDrop"]
      .concat(kinds.has("slack") ? ["slack", "markBefore", "markAfter"] : [])
      .sort(),
  );
  expect(asked.filter((one) => one.what === "power").some((one) => one.wavelengthNm === 1550)).toBe(true);
  const ids = asked.map((one) => readingId(one, one.what, one.wavelengthNm));
  expect(new Set(ids).size).toBe(ids.length);
  expect(asked.find((one) => one.what === "offset")).toMatchObject({ drawnText: "36 in", before: null });
});

test("the mark at every pole the cable passes on the way can be written down, and nobody waits for it but at its ends", () => {
  const both = { ...packet, terminalIds: "terminal-1 terminal-2" };
  const { cards } = packetSheet(openPlant(smallRoute()), both, written);
  const marks = cards.map(({ groups }) =>
    groups.flatMap(({ asked }) =>
      asked.flatMap((one) => (one.what === "mark" ? [[one.subjectId, one.alongId, one.isFurther]] : [])),
    ),
  );
  expect(marks).toEqual([
    [
      ["pole-2", "cable-1", true],
      ["pole-1", "cable-1", false],
    ],
    [
      ["pole-3", "cable-1", true],
      ["pole-4", "cable-1", false],
    ],
  ]);
});

test("what stood as read when the packet was written goes along, so that a change on both sides shows", () => {
  const route = withRows(smallRoute(), "reading", [readingRow(offset, "offset", 0.9)]);
  const [card] = packetSheet(openPlant(route), packet, written).cards;
  expect(card?.groups[0]?.asked[0]?.before).toMatchObject({ value: 0.9, text: "" });
});

test("the drawn card of a terminal goes along as pictures without anything that runs", () => {
  const [card] = packetSheet(openPlant(smallRoute()), packet, written).cards;
  expect(card?.drawings.length).toBeGreaterThan(0);
  for (const svg of card?.drawings ?? []) expect(svg).not.toMatch(/<script|<foreignObject|\son\w+=|href/i);
});
