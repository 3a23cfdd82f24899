import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stages } from "../../core/closeout/gates.ts";
import { applyChange, invert } from "../../core/edits/change.ts";
import { commandRegister } from "../../core/edits/register.ts";
import { catalogueNames } from "../../core/model/catalogueNames.ts";
import { builtStates, readingKinds } from "../../core/model/closeoutRows.ts";
import { references } from "../../core/model/references.ts";
import type { Route } from "../../core/model/route.ts";
import { type TableName, tableNames } from "../../core/model/tables.ts";
import { bareTown, strungTown } from "../fixtures/layout/townRoute.ts";
import { changed, smallRoute, withRows } from "../fixtures/route/buildRoute.ts";
import { closedOut, signedFor } from "../fixtures/route/closedOut.ts";
import { terminal1 } from "../fixtures/route/faultyReadings.ts";
import { photoOf, punchOf, readingRow } from "../fixtures/route/readingRow.ts";
import { revisionOf } from "../fixtures/route/revisionRow.ts";
import { endAt, spareM, withTrace } from "../fixtures/route/tracedRoute.ts";

const packetRow = {
  id: "packet-0",
  number: 1,
  crew: "North",
  terminalIds: "terminal-1",
  wavelengthsNm: "1310",
  by: "Ann",
  atIso: "2030-01-01",
};
const rivalRow = {
  ...({ id: "rival-1", readingId: "terminal terminal-1 offset", kind: "terminal", subjectId: "terminal-1" } as const),
  ...({ port: 0, alongId: "", what: "offset", wavelengthNm: 0, value: 0.9, text: "" } as const),
  by: "North",
  atIso: "2030-01-02",
  packetId: "packet-0",
  madeOn: "",
};

const waiver = { ruleId: "spare-ports", subjects: "terminal-1", reason: "agreed", by: "Ann", atIso: "2030-01-01" };

/** The small route with something for every command to work on, a bare town, and a strung one with a span drawn by hand. */
const routes = [
  roundedOut(),
  bareTown({ poleCount: 4, laterals: [{ atPole: 2, poleCount: 2 }] }),
  drawnOn(strungTown({ poleCount: 4, laterals: [{ atPole: 2, poleCount: 2 }] })),
];
const signedRoute = signedFor(closedOut(smallRoute()), "built");

function drawnOn(route: Route): Route {
  const pole = route.pole.get("M-3");
  const span = route.span.get("span-1");
  if (!pole || !span) throw new Error("the town has no third pole");
  const far = { ...pole, id: "hand-1", tag: "H1", line: "H", northM: pole.northM + 40 };
  const bare = { ...span, id: "span-hand", fromPoleId: pole.id, toPoleId: far.id, strandSectionId: null };
  return withRows(route, "pole", [far], "span", [bare]);
}

function roundedOut(): Route {
  const storage = { id: "storage-1", cableId: "cable-1", spanId: "span-1", offsetM: 20, storedM: 30 };
  const unit = {
    eastM: 20,
    northM: 20,
    kind: "home" as const,
    building: "",
    attachHeightM: null,
    groundM: null,
    note: "",
  };
  const closure = { id: "closure-1", name: "C-1", cableId: "cable-1", spanId: "span-3", offsetM: 30, note: "" };
  let route = changed(smallRoute(), "span", "span-1", { origin: "inferred" });
  route = withRows(route, "slack", [{ ...storage, kind: "storage", terminalId: null }], "closure", [closure]);
  route = withTrace(route, {}, [endAt(spareM)]);
  route = withRows(route, "groundPoint", [{ id: "ground-1", spanId: "span-2", offsetM: 30, groundM: 99 }]);
  route = withRows(route, "wireSag", [
    { id: "sag-1", spanId: "span-2", owner: "Telephone", kind: "communication", sagM: 0.5 },
  ]);
  route = withRows(route, "waiver", [{ id: "waiver-1", ...waiver }], "revision", [revisionOf("A", 1)]);
  route = withRows(route, "reading", [readingRow(terminal1, "offset", 1)], "punch", [punchOf("punch-1", 1)]);
  route = withRows(route, "punch", [{ ...punchOf("punch-2", 2), doneBy: "Ann", doneIso: "2030-02-01" }]);
  route = withRows(route, "photo", [photoOf("photo-1")]);
  route = withRows(route, "packet", [packetRow], "rivalReading", [rivalRow]);
  return withRows(
    route,
    "livingUnit",
    ["unit-1a", "unit-1b", "unit-1c"].map((id) => ({ id, address: id, ...unit })),
  );
}

/** An id of a row of a table in any of the routes; now and then one that is nowhere. */
function known(table: TableName): fc.Arbitrary<string> {
  const ids = [...new Set(routes.flatMap((route) => [...route[table].keys()]))];
  return fc.oneof({ weight: 12, arbitrary: fc.constantFrom(...ids) }, { weight: 1, arbitrary: fc.constant("nowhere") });
}

const fresh = fc.constantFrom("new-1", "new-2", "terminal-1", "pole-1");
const word = fc.constantFrom("", "Main St", "7");
const tag = fc.constantFrom("A", "B 2", "T-4");
const place = { eastM: fc.integer({ min: -200, max: 300 }), northM: fc.integer({ min: -200, max: 300 }) };
const along = fc.integer({ min: 1, max: 60 });
const size = fc.integer({ min: 1, max: 20 });
const no = fc.constant(null);
const yes = fc.boolean();
const poleValues = fc.record({ owner: word, aboveGroundM: fc.option(size) }, { requiredKeys: [] });

const plain = { port: fc.constantFrom(0, 0, 0, 1), alongId: fc.constant("") };
const builtThing = fc.oneof(
  fc.record({ kind: fc.constantFrom("pole", "bond"), subjectId: known("pole"), ...plain }),
  fc.record({ kind: fc.constantFrom("terminal", "port"), subjectId: known("terminal"), ...plain }),
  fc.record({ kind: fc.constant("drop"), subjectId: known("drop"), ...plain }),
);

const fixedTrace = {
  fileName: tag,
  fromEnd: fc.constantFrom("feed", "far"),
  wavelengthNm: fc.constant(1550),
  takenIso: word,
  groupIndex: fc.constant(1.468),
  pulseNs: fc.constant(30),
  spacingM: fc.constant(0.5),
  totalLossDb: no,
  returnLossDb: no,
  events: fc.constant([
    { number: 1, atM: 148, lossDb: 20, reflectanceDb: null, slopeDbPerKm: 0.2, reflects: true, ends: true },
  ]),
};

const inputs: Readonly<Record<string, fc.Arbitrary<object>>> = {
  "settings.set": fc.record({
    values: fc.record({ standoffM: size, dropTypeId: known("dropType") }, { requiredKeys: [] }),
    basis: fc.option(fc.record({ document: word, clause: word, edition: word, mark: fc.constant("seen") }), {
      nil: undefined,
    }),
  }),
  "catalogue.set": fc.record({
    table: fc.constant("dropType"),
    id: known("dropType"),
    values: fc.record({ name: tag, costEach: size }, { requiredKeys: [] }),
  }),
  "catalogue.add": fc.record({
    table: fc.constant("dropType"),
    row: fc.record({
      id: fresh,
      name: tag,
      weightNPerM: size,
      attenuationDbPerKm: size,
      costPerM: size,
      costEach: size,
      basisDocument: word,
      basisClause: word,
      basisEdition: word,
      basisMark: fc.constant("practice"),
    }),
  }),
  "catalogue.copy": fc.record({
    table: fc.constant("dropType"),
    id: known("dropType"),
    newId: fc.constantFrom("drop-copy-1", "drop-copy-2"),
    name: tag,
  }),
  "catalogue.remove": fc
    .constantFrom(...catalogueNames.filter((table) => routes.some((route) => route[table].size > 0)))
    .chain((table) => fc.record({ table: fc.constant(table), id: known(table) })),
  "pole.add": fc.record({
    poleId: fresh,
    tag,
    ...place,
    groundM: no,
    aboveGroundM: no,
    poleClass: word,
    owner: word,
    line: word,
    order: size,
    terminalAllowed: yes,
    note: word,
  }),
  "pole.extend": fc.record({ fromPoleId: known("pole"), poleId: fresh, tag, ...place, line: word, spanId: fresh }),
  "pole.move": fc.record({ poleId: known("pole"), ...place }),
  "pole.rename": fc.record({ poleId: known("pole"), tag }),
  "span.add": fc.record({
    spanId: fresh,
    fromPoleId: known("pole"),
    toPoleId: known("pole"),
    lengthM: fc.option(along),
    strandSectionId: fc.option(known("strandSection")),
    origin: fc.constantFrom("drawn", "inferred"),
    note: word,
  }),
  "span.confirm": fc.record({ spanId: known("span") }),
  "span.split": fc.record({ spanId: known("span"), poleId: fresh, tag, offsetM: along, nextSpanId: fresh }),
  "span.join": fc.record({ poleId: known("pole") }),
  "cable.reverse": fc.record({ cableId: known("cable") }),
  "attachment.add": fc.record({
    attachmentId: fresh,
    poleId: known("pole"),
    owner: word,
    kind: fc.constantFrom("neutral", "ourStrand"),
    heightM: size,
    voltageV: size,
    bonded: fc.boolean(),
    note: word,
  }),
  "attachment.set": fc.record({ attachmentId: known("attachment"), heightM: size }),
  "crossing.add": fc.record({
    crossingId: fresh,
    spanId: known("span"),
    name: word,
    surface: fc.constantFrom("road", "rail"),
    offsetM: along,
    widthM: size,
    surfaceM: no,
  }),
  "guy.add": fc.record({
    guyId: fresh,
    poleId: known("pole"),
    strandTypeId: known("strandType"),
    heightM: size,
    leadM: size,
    directionRad: fc.constant(1),
    anchorN: fc.option(size),
    note: word,
  }),
  "groundPoint.add": fc.record({ groundPointId: fresh, spanId: known("span"), offsetM: along, groundM: size }),
  "structure.add": fc.record({
    structureId: fresh,
    spanId: known("span"),
    name: word,
    kind: fc.constantFrom("building", "litSign"),
    offsetM: along,
    lengthM: size,
    besideM: size,
    bottomM: fc.option(size),
    side: fc.constantFrom("left", "right"),
    heightM: size,
  }),
  "wireSag.add": fc.record({
    wireSagId: fresh,
    spanId: known("span"),
    owner: word,
    kind: fc.constant("communication"),
    sagM: size,
  }),
  "dropCrossing.add": fc.record({
    dropCrossingId: fresh,
    livingUnitId: known("livingUnit"),
    name: word,
    surface: fc.constantFrom("road", "driveway"),
    fromUnitM: along,
    widthM: size,
    surfaceM: no,
  }),
  "crossing.set": fc.record({
    crossingId: known("crossing"),
    values: fc.record({ widthM: size, name: word }, { requiredKeys: [] }),
  }),
  "unit.add": fc.record({
    livingUnitId: fresh,
    address: tag,
    ...place,
    kind: fc.constantFrom("home", "lot"),
    building: word,
    attachHeightM: no,
    groundM: no,
    note: word,
  }),
  "line.string": fc.record({
    strandTypeId: known("strandType"),
    cableTypeId: fc.oneof(known("cableType"), fc.constant("")),
    hubPoleId: fc.oneof(known("pole"), fc.constant("")),
    opticalClassId: known("opticalClass"),
  }),
  "lateral.string": fc.record({ spanId: fc.oneof(known("span"), fc.constant("span-hand")) }),
  "terminal.hang": fc.record({
    terminalId: fresh,
    spanId: known("span"),
    poleId: known("pole"),
    terminalModelId: known("terminalModel"),
  }),
  "terminal.move": fc.record({ terminalId: known("terminal"), spanId: known("span"), offsetM: along }),
  "terminal.turn": fc.record({ terminalId: known("terminal") }),
  "terminal.remove": fc.record({ terminalId: known("terminal") }),
  "terminal.reserve": fc.record(
    {
      terminalId: known("terminal"),
      reservedPortCount: fc.integer({ min: 0, max: 9 }),
      reservedFor: fc.constantFrom("", "vacant lot"),
    },
    { requiredKeys: ["terminalId", "reservedPortCount"] },
  ),
  "terminal.resize": fc.record({ terminalId: known("terminal"), terminalModelId: known("terminalModel") }),
  "terminal.rename": fc.record({ terminalId: known("terminal"), name: tag }),
  "terminal.pin": fc.record({ terminalId: known("terminal"), pinned: yes }),
  "slack.add": fc.record({
    slackId: fresh,
    cableId: known("cable"),
    spanId: known("span"),
    offsetM: along,
    storedM: size,
    kind: fc.constantFrom("access", "storage"),
    terminalId: fc.option(known("terminal")),
  }),
  "slack.set": fc.record({ slackId: known("slack"), storedM: size }),
  "slack.move": fc.record({ slackId: known("slack"), spanId: known("span"), offsetM: along }),
  "slack.remove": fc.record({ slackId: known("slack") }),
  "closure.add": fc.record({
    closureId: fresh,
    name: tag,
    cableId: known("cable"),
    spanId: known("span"),
    offsetM: along,
    note: word,
  }),
  "drop.add": fc.record({
    dropId: fresh,
    terminalId: known("terminal"),
    port: size,
    livingUnitId: known("livingUnit"),
  }),
  "drop.move": fc.record({ dropId: known("drop"), terminalId: known("terminal"), port: size }),
  "drop.remove": fc.record({ dropId: known("drop") }),
  "drops.even": fc.record(
    {
      terminalIds: fc.uniqueArray(known("terminal"), { minLength: 2, maxLength: 3 }),
      extraDropM: fc.constantFrom(0, 20, 500),
    },
    { requiredKeys: ["extraDropM"] },
  ),
  "drops.move": fc.record({
    dropIds: fc.uniqueArray(known("drop"), { minLength: 1, maxLength: 2 }),
    terminalId: known("terminal"),
  }),
  "drops.plug": fc.record({
    plugs: fc.array(fc.record({ dropId: known("drop"), port: fc.integer({ min: 1, max: 3 }) }), {
      minLength: 1,
      maxLength: 3,
    }),
  }),
  "drop.pin": fc.record({ dropId: known("drop"), pinned: yes }),
  "fiber.give": fc.record({
    fiberUseId: fc.oneof(fresh, known("fiberUse")),
    cableId: known("cable"),
    fiber: fc.integer({ min: 1, max: 60 }),
    terminalId: known("terminal"),
    splitterId: known("splitter"),
    feedId: fc.option(known("feed")),
  }),
  "fiber.free": fc.record({ fiberUseId: known("fiberUse") }),
  "cable.lash": fc.record({
    cableId: fresh,
    name: tag,
    cableTypeId: known("cableType"),
    alongCableId: known("cable"),
  }),
  "cable.resize": fc.record({ cableId: known("cable"), cableTypeId: known("cableType") }),
  "finding.waive": fc.record({
    waiverId: fresh,
    ruleId: fc.constantFrom("spare-ports", "unit-without-port"),
    subjects: fc.constantFrom("terminal-1", "unit-1"),
    reason: tag,
    by: tag,
    atIso: tag,
  }),
  "waiver.remove": fc.record({ waiverId: known("waiver") }),
  "revision.issue": fc.record({
    revisionId: fresh,
    letter: tag,
    dateIso: tag,
    by: word,
    checkedBy: word,
    reason: word,
  }),
  "milestone.reach": fc.record({
    subjects: fc.array(builtThing, { minLength: 1, maxLength: 4 }),
    state: fc.constantFrom("designed", ...builtStates),
    by: tag,
    atIso: tag,
  }),
  "packet.give": fc.record({
    packetId: fc.constantFrom("packet-0", "packet-9"),
    crew: tag,
    terminalIds: fc.array(known("terminal"), { minLength: 1, maxLength: 3 }),
    wavelengthsNm: fc.subarray([1310, 1550]),
    by: tag,
    atIso: tag,
  }),
  "rival.decide": fc.record({ rivalId: known("rivalReading"), stands: fc.constantFrom("present", "brought") }),
  "reading.take": fc
    .tuple(
      builtThing,
      fc.record({
        what: fc.constantFrom(...readingKinds),
        wavelengthNm: fc.constantFrom(0, 1310, 1550),
        value: fc.option(fc.double({ min: -50, max: 50, noNaN: true })),
        text: tag,
        by: tag,
        atIso: tag,
      }),
    )
    .map(([thing, read]) => ({ ...thing, ...read })),
  "reading.remove": fc.record({ readingId: known("reading") }),
  "punch.add": fc
    .tuple(
      builtThing,
      fc.record({
        punchId: fresh,
        what: tag,
        ruleId: word,
        subjects: word,
        assignedTo: word,
        dueIso: word,
        by: tag,
        atIso: tag,
      }),
    )
    .map(([thing, item]) => ({ ...thing, ...item })),
  "punch.set": fc.record(
    { punchId: known("punch"), what: tag, assignedTo: word, dueIso: word },
    { requiredKeys: ["punchId"] },
  ),
  "punch.done": fc.record({ punchId: known("punch"), by: tag, atIso: tag, note: word }),
  "punch.reopen": fc.record({ punchId: known("punch") }),
  "photo.add": fc
    .tuple(
      builtThing,
      fc.record({
        photoId: fresh,
        moment: fc.constantFrom("built", "before", "after"),
        caption: word,
        widthPx: fc.integer({ min: 1, max: 2000 }),
        heightPx: fc.integer({ min: 1, max: 2000 }),
        keptHash: tag,
        by: tag,
        atIso: tag,
      }),
    )
    .map(([thing, photo]) => ({ ...thing, ...photo })),
  "photo.remove": fc.record({ photoId: known("photo") }),
  "trace.keep": fc.record({
    traces: fc.array(
      fc.record({
        keptHash: fc.constantFrom("a", "b", "c"),
        cableId: fc.option(known("cable")),
        fiber: fc.option(fc.constantFrom(1, 2, 999)),
        leadM: fc.option(size),
        ...fixedTrace,
      }),
      { minLength: 1, maxLength: 3 },
    ),
    by: tag,
    atIso: tag,
  }),
  "trace.give": fc.record(
    {
      traceIds: fc.array(known("trace"), { minLength: 1, maxLength: 2 }),
      cableId: fc.option(known("cable")),
      fiber: fc.option(fc.constantFrom(1, 2, 999)),
      fromEnd: fc.constantFrom("feed", "far"),
      leadM: fc.option(size),
    },
    { requiredKeys: ["traceIds"] },
  ),
  "trace.remove": fc.record({ traceIds: fc.array(known("trace"), { minLength: 1, maxLength: 2 }) }),
  "signOff.sign": fc.record({
    signOffId: fc.constantFrom("sign-1", "sign-2"),
    stage: fc.constantFrom(...stages),
    by: tag,
    role: word,
    note: word,
    atIso: tag,
  }),
  "signOff.reopen": fc.record({ revisionId: fresh, letter: tag, by: tag, reason: tag, atIso: tag }),
  "revision.approve": fc.record({ revisionId: known("revision"), by: tag, dateIso: tag }),
  "revision.void": fc.record({ revisionId: known("revision"), by: tag, dateIso: tag, reason: tag }),
  "row.remove": fc
    .constantFrom(...tableNames)
    .chain((table) =>
      routes.some((route) => route[table].size > 0)
        ? fc.record({ table: fc.constant(table), id: known(table) })
        : fc.constant({ table, id: "nowhere" }),
    ),
  "row.set": fc.record({ table: fc.constant("pole"), id: known("pole"), values: poleValues }),
  "rows.set": fc.record({
    edits: fc.uniqueArray(fc.record({ table: fc.constant("pole"), id: known("pole"), values: poleValues }), {
      minLength: 1,
      maxLength: 3,
      selector: (one) => one.id,
    }),
  }),
  "rows.remove": fc.record({
    rows: fc.array(fc.record({ table: fc.constant("terminal"), id: known("terminal") }), {
      minLength: 1,
      maxLength: 3,
    }),
  }),
  "span.measure": fc.record({ spanId: known("span"), lengthM: along }),
  "feed.add": fc.record({
    feedId: fresh,
    name: tag,
    opticalClassId: known("opticalClass"),
    hubSplitCount: size,
    upstreamLossDb: size,
    upstreamM: size,
  }),
  "steps.run": fc.record({
    label: fc.constant("Paste 2 cells"),
    steps: fc.tuple(
      fc.record({ command: fc.constant("pole.rename"), input: fc.record({ poleId: known("pole"), tag }) }),
      fc.record({ command: fc.constant("span.measure"), input: fc.record({ spanId: known("span"), lengthM: along }) }),
    ),
  }),
  "layout.run": fc.record({ cables: fc.array(known("cable"), { maxLength: 2 }) }, { requiredKeys: [] }),
};

test("every command of the register is tried, and no other", () => {
  expect(Object.keys(inputs).sort()).toEqual(commandRegister.map((one) => one.id).sort());
});

describe("undoing puts every row back, redoing brings the edit again, a refusal changes nothing", () => {
  test.each(commandRegister)("$id", (command) => {
    const seen = { granted: 0, refused: 0 };
    const input = inputs[command.id];
    if (!input) throw new Error(`no inputs for ${command.id}`);
    fc.assert(
      fc.property(
        fc.constantFrom(...(command.id.startsWith("signOff.") ? [signedRoute] : routes)),
        input,
        (route, given) => {
          const before = textOf(route);
          const asked = command.ask(route, given);
          expect(textOf(route)).toBe(before);
          if (!asked.ok) {
            seen.refused += 1;
            for (const words of Object.values(asked.fault)) expect(words).not.toBe("");
            return;
          }
          seen.granted += 1;
          const change = { ...asked.value, author: "Ann", atIso: "2030-01-01" };
          const done = applied(route, change);
          expect(strays(done)).toEqual([]);
          const undone = applied(done, invert(change));
          expect(sorted(undone)).toEqual(sorted(route));
          expect(sorted(applied(undone, invert(invert(change))))).toEqual(sorted(done));
        },
      ),
      { numRuns: 120, seed: 7 },
    );
    expect(seen.granted, "no generated request was granted").toBeGreaterThan(0);
  });
});

function applied(route: Route, change: Parameters<typeof applyChange>[1]): Route {
  const done = applyChange(route, change);
  if (!done.ok) throw new Error(`${done.fault.what} ${done.fault.where}`);
  return done.value;
}

/** References of a route that lead nowhere. */
function strays(route: Route): string[] {
  return tableNames.flatMap((table) =>
    Object.entries<TableName>(references[table]).flatMap(([column, target]) =>
      [...route[table].values()].flatMap((row) => {
        const id: unknown = Reflect.get(row, column);
        return typeof id === "string" && !route[target].has(id) ? [`${table} ${row.id} ${column}`] : [];
      }),
    ),
  );
}

function sorted(route: Route): object {
  return Object.fromEntries(
    tableNames.map((name) => [name, Object.fromEntries([...route[name]].sort(([a], [b]) => (a < b ? -1 : 1)))]),
  );
}

function textOf(route: Route): string {
  return JSON.stringify(tableNames.map((name) => [...route[name]]));
}
