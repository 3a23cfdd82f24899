import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { disputes } from "../../core/closeout/disputes.ts";
import type { BroughtReading, PacketFile, ReadContent, SignedContent } from "../../core/closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { readPacketFile } from "../../core/closeout/packet/readPacketFile.ts";
import { readingId, subjectOf } from "../../core/closeout/subject.ts";
import { applyChange, invert } from "../../core/edits/change.ts";
import { packetMerge } from "../../core/edits/packet/packetMerge.ts";
import type { KeptPhoto } from "../../core/edits/packet/photoMerge.ts";
import { findCommand } from "../../core/edits/register.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
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
      wavelengthsNm: [],
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

const stoodIn = (route: Route, thing: Asked): SignedContent | null => {
  const row = route.reading.get(idOf(thing));
  return row ? signedOf(row) : null;
};
const signedOf = ({ value, text, by, atIso }: SignedContent): SignedContent => ({ value, text, by, atIso });

/** The last crew's page was written before the office had read anything. */
const isEarly = (crew: number) => crew === crews.length - 1;

/** What pages of three crews write, in order: what was typed into each field since the file before; the office's own 7 among it. */
const typed = fc.array(fc.option(fc.constantFrom(1, 2, 7)), { minLength: things.length, maxLength: things.length });
const pages = fc.array(fc.record({ crew: fc.nat(crews.length - 1), typed, copy: fc.nat(1), isLate: fc.boolean() }), {
  maxLength: 5,
});
const written = pages.map((files) => {
  const kept = new Map<string, { last: SignedContent | null; sent: SignedContent[] }>();
  const newest = new Map<string, SignedContent>();
  return files.map(({ crew, typed: values, copy, isLate }, hour) => {
    const readings = things.flatMap((thing, index): BroughtReading[] => {
      // the same file may have been given to two phones
      const name = `${crew} ${copy} ${idOf(thing)}`;
      const field = kept.get(name) ?? { last: null, sent: [] };
      const value = values[index] ?? null;
      if (value !== null)
        field.last = { value, text: "", by: `${crews[crew]} ${copy}`, atIso: `2030-05-02T1${hour}:00` };
      if (!field.last) return [];
      // a page written late was made on what another crew had brought by then
      const before = (isLate && newest.get(idOf(thing))) || (isEarly(crew) ? null : stoodIn(given, thing));
      const reading = { ...thing, before, sent: [...field.sent], after: { ...field.last } };
      field.sent.push(field.last);
      newest.set(idOf(thing), field.last);
      kept.set(name, field);
      return [reading];
    });
    return { ...fileOf(crew, readings), photos: photoOf(hour, copy) };
  });
});

/** A picture two crews may have sent to each other, under words of their own. */
function photoOf(hour: number, copy: number): KeptPhoto[] {
  const about = { kind: "terminal", subjectId: "terminal-1", port: 0, alongId: "", moment: "built" } as const;
  const said = { caption: `words ${copy}`, by: "Ann", atIso: `2030-05-02T1${hour % 2}:00` };
  return [{ ...about, ...said, widthPx: 4, heightPx: 3, keptHash: "a".repeat(64) }];
}

type File = Omit<PacketFile, "photos"> & { readonly photos: readonly KeptPhoto[] };

function fileOf(crew: number, readings: readonly BroughtReading[]): PacketFile & { photos: [] } {
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
  test("any order of files, some of them twice, gives the same rows", () => {
    fc.assert(
      fc.property(
        written.chain((files) => fc.tuple(fc.constant(files), shuffled(files), fc.subarray(files))),
        ([files, order, again]) => {
          expect(rowsOf(bring(given, [...order, ...again]))).toEqual(rowsOf(bring(given, files)));
        },
      ),
      { numRuns: 400 },
    );
  });

  test("nothing is lost: every reading brought stands, waits beside others, gave way to one made on it, or was told as refused", () => {
    fc.assert(
      fc.property(written, (files) => {
        let route = given;
        for (const file of files) {
          const merge = packetMerge(route, file, file.photos, never);
          route = applied(route, merge.rows);
          const { takenCount, photoCount, alreadyCount, rivalCount, refused } = merge;
          expect(takenCount + photoCount + alreadyCount + rivalCount + refused.length).toBeGreaterThanOrEqual(
            file.readings.length + file.photos.length,
          );
        }
        for (const { after, ...asked } of files.flatMap((one) => one.readings)) {
          const isKnown = files.some((one) =>
            one.readings.some(({ before, sent }) =>
              [...(before ? [before] : []), ...sent].some((each) => isOne(each, after)),
            ),
          );
          const isHere = contents(route, idOf(asked)).includes(said(after));
          expect(isHere || isKnown || asked.subjectId === "terminal-gone").toBe(true);
        }
      }),
    );
  });

  test("of crews that differ none stands", () => {
    fc.assert(
      fc.property(written, (files) => {
        const route = bring(given, files);
        const waiting = [...route.rivalReading.values()];
        for (const id of new Set(waiting.map((one) => one.readingId))) {
          const standing = route.reading.get(id);
          const says = new Set(waiting.filter((one) => one.readingId === id).map(said));
          if (standing?.packetId !== null) expect(standing === undefined).toBe(says.size > 1);
        }
      }),
    );
  });

  test("one undo takes a whole packet back", () => {
    fc.assert(
      fc.property(written, written, (files, [last]) => {
        const before = bring(given, files);
        const { rows } = packetMerge(before, last ?? fileOf(0, []), last?.photos ?? [], never);
        const change = { label: "", author: "", atIso: "", rows };
        expect(applied(applied(before, rows), invert(change).rows)).toEqual(before);
      }),
    );
  });

  test("what the same page sent before and then corrected is no disagreement, whichever file comes first", () => {
    const [thing] = things;
    if (!thing) throw new Error("there is nothing to read");
    const read = { value: 1, text: "", by: "North", atIso: "2030-05-02T10:00:00Z" };
    const noon = fileOf(0, [{ ...thing, before: null, sent: [], after: read }]);
    const later = { ...read, value: 2, atIso: "2030-05-02T18:00:00Z" };
    const evening = fileOf(0, [{ ...thing, before: null, sent: [read], after: later }]);
    for (const files of [
      [noon, evening],
      [evening, noon],
    ])
      expect(contents(bring(given, files), idOf(thing))).toEqual(["2 "]);
  });

  test("two crews that say the same are one reading, and wait together when a third says otherwise", () => {
    const [thing] = things;
    if (!thing) throw new Error("there is nothing to read");
    const file = (crew: number, value: number) =>
      fileOf(crew, [
        { ...thing, before: null, sent: [], after: { value, text: "", by: crews[crew] ?? "", atIso: "2030" } },
      ]);
    const agreed = bring(given, [file(0, 1), file(1, 1)]);
    expect(agreed.reading.get(idOf(thing))).toMatchObject({ value: 1, by: "North" });
    expect(disputes(openPlant(agreed))).toEqual([]);
    const disputed = bring(agreed, [file(2, 2)]);
    expect(disputed.reading.has(idOf(thing))).toBe(false);
    const sides = disputes(openPlant(disputed)).flatMap((one) => one.sides);
    expect(sides.map(({ rivals }) => rivals.map((one) => one.by))).toEqual([["North", "South"], ["East"]]);
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

function bring(route: Route, files: readonly File[]): Route {
  return files.reduce((now, file) => applied(now, packetMerge(now, file, file.photos, never).rows), route);
}

function rowsOf({ reading, rivalReading, photo, milestone }: Route) {
  return { reading, rivalReading, photo, milestone };
}

function shuffled<T>(list: readonly T[]) {
  return fc.shuffledSubarray([...list], { minLength: list.length, maxLength: list.length });
}

function isOne(one: SignedContent, other: SignedContent): boolean {
  return said(one) === said(other) && one.by === other.by && one.atIso === other.atIso;
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
