import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BroughtReading, PacketFile, ReadContent } from "../../core/closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { readPacketFile } from "../../core/closeout/packet/readPacketFile.ts";
import { readingId, subjectOf } from "../../core/closeout/subject.ts";
import { applyChange, invert } from "../../core/edits/change.ts";
import { packetMerge } from "../../core/edits/packet/packetMerge.ts";
import { findCommand } from "../../core/edits/register.ts";
import type { Route } from "../../core/model/route.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";

const crews = ["North", "South", "East"];
const never = () => false;

/** The route with packets given to three crews, and one reading taken down by hand before. */
const given = crews.reduce(
  (route, crew, index) =>
    asked(route, "packet.give", {
      packetId: `packet-${index + 1}`,
      crew,
      terminalIds: ["terminal-1"],
      by: "Office",
      atIso: "2030-05-01T08:00:00Z",
    }),
  asked(smallRoute(), "reading.take", {
    kind: "terminal",
    subjectId: "terminal-1",
    port: 0,
    alongId: "",
    what: "slack",
    wavelengthNm: 0,
    value: 7,
    text: "",
    by: "Office",
    atIso: "2030-04-01",
  }),
);

type Asked = Omit<BroughtReading, "before" | "sent" | "after">;
const plain = { port: 0, alongId: "", wavelengthNm: 0 };
const things: readonly Asked[] = [
  { kind: "terminal", subjectId: "terminal-1", what: "offset", ...plain },
  { kind: "terminal", subjectId: "terminal-1", what: "slack", ...plain },
  { kind: "port", subjectId: "terminal-1", what: "power", ...plain, port: 1, wavelengthNm: 1490 },
  { kind: "pole", subjectId: "pole-2", what: "mark", ...plain, alongId: "cable-1" },
  { kind: "terminal", subjectId: "terminal-gone", what: "offset", ...plain },
];

const idOf = ({ kind, subjectId, port, alongId, what, wavelengthNm }: Asked) =>
  readingId(subjectOf(kind, subjectId, port, alongId), what, wavelengthNm);

/** What a crew brings: each thing read once, on what stood when the packets were given. */
const packet = fc
  .record({
    crew: fc.integer({ min: 0, max: 2 }),
    values: fc.array(fc.option(fc.integer({ min: 1, max: 3 })), { minLength: things.length, maxLength: things.length }),
  })
  .map(({ crew, values }) =>
    fileOf(
      crew,
      values.flatMap((value, index) => {
        const thing = things[index];
        if (value === null || !thing) return [];
        const before = given.reading.get(idOf(thing)) ?? null;
        const after = { value, text: "", by: crews[crew] ?? "", atIso: `2030-05-02T1${index}:00:00Z` };
        return [{ ...thing, before: before && { value: before.value, text: before.text }, sent: [], after }];
      }),
    ),
  );
const oneOfEachCrew = fc.uniqueArray(packet, { maxLength: 3, selector: (one) => one.packetId });

function fileOf(crew: number, readings: readonly BroughtReading[]): PacketFile {
  return {
    format: packetFormat,
    version: packetVersion,
    packetId: `packet-${crew + 1}`,
    routeName: "Small",
    crew: crews[crew] ?? "",
    readings: [...readings],
    unread: [],
    photos: [],
  };
}

describe("packets brought back", () => {
  test("any order of crews gives the same readings, and beside each other the same that disagree", () => {
    fc.assert(
      fc.property(oneOfEachCrew, fc.infiniteStream(fc.nat()), (files, dice) => {
        const other = files
          .map((file) => ({ file, at: dice.next().value ?? 0 }))
          .sort((a, b) => a.at - b.at)
          .map((one) => one.file);
        expect(outcome(bring(given, other))).toEqual(outcome(bring(given, files)));
      }),
    );
  });

  test("a packet brought twice is the same as once, whatever came between", () => {
    fc.assert(
      fc.property(oneOfEachCrew, (files) => {
        const once = bring(given, files);
        expect(bring(once, files)).toEqual(once);
      }),
    );
  });

  test("nothing is lost: every reading brought stands, waits beside what stands, or was told as refused", () => {
    fc.assert(
      fc.property(oneOfEachCrew, (files) => {
        let route = given;
        for (const file of files) {
          const merge = packetMerge(route, file, [], never);
          route = applied(route, merge.rows);
          const { takenCount, alreadyCount, rivalCount, refused } = merge;
          expect(takenCount + alreadyCount + rivalCount + refused.length).toBe(file.readings.length);
          for (const entry of file.readings)
            expect(
              contents(route, idOf(entry)).includes(said(entry.after)) || entry.subjectId === "terminal-gone",
            ).toBe(true);
        }
        expect(given.reading.size).toBeLessThanOrEqual(route.reading.size);
      }),
    );
  });

  test("one undo takes a whole packet back", () => {
    fc.assert(
      fc.property(oneOfEachCrew, packet, (files, last) => {
        const before = bring(given, files);
        const { rows } = packetMerge(before, last, [], never);
        const change = { label: "", author: "", atIso: "", rows };
        expect(applied(applied(before, rows), invert(change).rows)).toEqual(before);
      }),
    );
  });

  test("what the same page sent before and then corrected is no disagreement", () => {
    const [thing] = things;
    if (!thing) throw new Error("there is nothing to read");
    const signed = { by: "North", atIso: "2030-05-02T10:00:00Z" };
    const noon = { ...thing, before: null, sent: [], after: { value: 1, text: "", ...signed } };
    const evening = { ...noon, sent: [{ value: 1, text: "" }], after: { ...noon.after, value: 2 } };
    const route = bring(given, [fileOf(0, [noon]), fileOf(0, [evening])]);
    expect(contents(route, idOf(thing))).toEqual(["2 "]);
  });
});

describe("damaged packets", () => {
  const whole = JSON.stringify(
    fileOf(
      0,
      things.map((one, index) => ({
        ...one,
        before: null,
        sent: [],
        after: { value: index, text: "", by: "North", atIso: "2030" },
      })),
    ),
  );

  test("a packet with letters exchanged, cut or put in is refused or leaves a sound route, soon and without a crash", () => {
    const edit = fc.record({ at: fc.nat(whole.length), cut: fc.nat(40), put: fc.string({ maxLength: 12 }) });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        const text = edits.reduce((now, { at, cut, put }) => now.slice(0, at) + put + now.slice(at + cut), whole);
        holds(text);
      }),
      { seed: 2030, numRuns: 1500 },
    );
  });

  test("a packet with any value in the place of any other is refused or leaves a sound route", () => {
    const places = placesOf(JSON.parse(whole));
    const odd = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.constantFrom("<script>", "__proto__", "a".repeat(5000), 1e308),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places), odd, (place, value) => {
        const file: unknown = JSON.parse(whole);
        put(file, place, value);
        holds(JSON.stringify(file));
      }),
      { seed: 2031, numRuns: 1500 },
    );
  });

  test("deep nesting and long lists end soon", () => {
    holds("[".repeat(2_000_000));
    holds(whole.replace('"photos":[]', `"photos":${"[".repeat(50_000)}${"]".repeat(50_000)}`));
    const file = JSON.parse(whole);
    holds(JSON.stringify({ ...file, readings: Array.from({ length: 30_000 }, () => file.readings[0]) }));
  });
});

/** Brings a text that may be anything: it is refused whole, or what it does to the route is a sound edit. */
function holds(text: string): void {
  const read = readPacketFile(text, "crew.json");
  if (!read.ok) {
    expect(["bad-packet", "newer-packet"]).toContain(read.fault.code);
    return;
  }
  const { photos: _, ...file } = read.value;
  const merge = packetMerge(given, { ...file, packetId: "packet-1" }, [], never);
  applied(given, merge.rows);
  const { takenCount, alreadyCount, rivalCount, refused } = merge;
  expect(takenCount + alreadyCount + rivalCount + refused.length).toBe(file.readings.length + file.unread.length);
}

type Place = readonly (string | number)[];

function placesOf(value: unknown): Place[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[key], ...placesOf(inner).map((rest) => [key, ...rest])]);
}

function put(target: unknown, [key = "", ...rest]: Place, value: unknown): void {
  if (typeof target !== "object" || target === null) return;
  if (rest.length === 0) Reflect.set(target, key, value);
  else put(Reflect.get(target, key), rest, value);
}

function bring(route: Route, files: readonly PacketFile[]): Route {
  return files.reduce((now, file) => applied(now, packetMerge(now, file, [], never).rows), route);
}

/** Undisputed readings with who read them; of the others what stands and waits, in no order. */
function outcome(route: Route) {
  const ids = new Set([...route.reading.keys(), ...[...route.rivalReading.values()].map((one) => one.readingId)]);
  return [...ids].sort().map((id) => [id, contents(route, id).sort()]);
}

function contents(route: Route, id: string): string[] {
  const rivals = [...route.rivalReading.values()].filter((one) => one.readingId === id);
  const standing = route.reading.get(id);
  return [...new Set([...(standing ? [standing] : []), ...rivals].map(said))];
}

function said({ value, text }: ReadContent): string {
  return `${value} ${text}`;
}

function applied(route: Route, rows: Parameters<typeof applyChange>[1]["rows"]): Route {
  const next = applyChange(route, { rows });
  if (!next.ok) throw new Error(`${next.fault.what} ${next.fault.where}`);
  return next.value;
}

function asked(route: Route, id: string, input: unknown): Route {
  const done = findCommand(id)?.ask(route, input);
  if (!done?.ok) throw new Error(done?.fault.what ?? "no such command");
  return applied(route, done.value.rows);
}
