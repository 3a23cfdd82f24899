import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { builtPlant } from "../../core/closeout/builtPlant.ts";
import { readingId, type Subject, subjectOf } from "../../core/closeout/subject.ts";
import { asBuiltRows } from "../../core/edits/asBuiltRows.ts";
import { rowEdit } from "../../core/edits/tableRow.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { clearanceCases } from "../../core/model/clearanceRows.ts";
import type { ReadingKind } from "../../core/model/closeoutRows.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { groundClearance } from "../../core/plant/clearance.ts";
import { openPlant, type Plant } from "../../core/plant/plant.ts";
import { strandAtPole } from "../../core/plant/strandHeight.ts";
import { terminalHang } from "../../core/plant/terminalView.ts";
import { asBuiltRules } from "../../core/rules/asBuiltRules.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { changed, smallRoute, without, withRows } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";
import { withDropCrossing, withOnPole, withStructure } from "../fixtures/route/oneMore.ts";
import { readingRow } from "../fixtures/route/readingRow.ts";

const poleCount = 5;
const poles = Array.from({ length: poleCount }, (_, n) => `pole-${n + 1}`);
const terminals = ["terminal-1", "terminal-2", "terminal-3"];

/** Routes with everything on them that heights are held against, clamped or slipping, one without our strand drawn at a pole. */
const anyRoute: fc.Arbitrary<Route> = fc
  .record({ slips: fc.boolean(), undrawn: fc.boolean(), barnM: fc.constantFrom(3, 4.4, 5) })
  .map(({ slips, undrawn, barnM }) => {
    let route = smallRoute({ poleCount });
    route = withRows(route, "structure", [...withStructure({ besideM: 0, heightM: barnM }).structure.values()]);
    route = withRows(route, "attachment", [...withOnPole({ kind: "streetLight", heightM: 7 }).attachment.values()]);
    route = withRows(route, "dropCrossing", [...withDropCrossing().dropCrossing.values()]);
    route = changed(route, "livingUnit", "unit-1", { groundM: 101.5 });
    if (slips) route = changed(route, "strandSection", "section-1", { atPoles: "slipping" });
    return undrawn ? without(route, "attachment", "strand-3") : route;
  });

type Read = { readonly subject: Subject; readonly what: ReadingKind; readonly value: number };

const anyRead: fc.Arbitrary<Read> = fc.oneof(
  fc.record({
    subject: fc.constantFrom(...poles).map((id) => subjectOf("pole", id)),
    what: fc.constant<ReadingKind>("height"),
    value: fc.double({ min: 3, max: 12, noNaN: true }),
  }),
  fc.record({
    subject: fc.constantFrom(...terminals).map((id) => subjectOf("terminal", id)),
    what: fc.constantFrom<ReadingKind>("offset", "slack"),
    value: fc.double({ min: 0.1, max: 50, noNaN: true }),
  }),
  fc.record({
    subject: fc.constantFrom("drop-1", "drop-2").map((id) => subjectOf("drop", id)),
    what: fc.constant<ReadingKind>("portOfDrop"),
    value: fc.integer({ min: 1, max: 9 }),
  }),
);

function withRead(route: Route, reads: readonly Read[]): Route {
  return withRows(
    route,
    "reading",
    reads.map(({ subject, what, value }) => readingRow(subject, what, value)),
  );
}

const builtIds = new Set(asBuiltRules.map((one) => one.id));
const builtFindings = (route: Route) => findingsOf(route).filter((one) => builtIds.has(one.ruleId));

/** What was drawn, read. */
function readAsDrawn(plant: Plant): readonly Read[] {
  return [
    ...poles.map((id) => {
      const value = strandAtPole(plant, id).heightM;
      return { subject: subjectOf("pole", id), what: "height" as const, value };
    }),
    ...terminals.map((id) => {
      const value = terminalHang(plant, id).fromPoleM;
      return { subject: subjectOf("terminal", id), what: "offset" as const, value };
    }),
  ];
}

describe("the route as built", () => {
  it("is the drawing where everything was read as drawn, and no rule finds anything built otherwise", () => {
    fc.assert(
      fc.property(anyRoute, fc.subarray([...poles, ...terminals]), (route, ids) => {
        const reads = readAsDrawn(openPlant(route)).filter(({ subject }) => ids.includes(subject.subjectId));
        const read = withRead(route, reads);
        expect(asBuiltRows(read).filter((one) => one.before !== null)).toEqual([]);
        expect(builtFindings(read)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it("clears the ground no better anywhere where one strand was hung lower, in any case", () => {
    let spanCount = 0;
    fc.assert(
      fc.property(
        anyRoute,
        fc.constantFrom(...poles),
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        (route, id, downM) => {
          const value = strandAtPole(openPlant(route), id).heightM - downM;
          const plant = openPlant(withRead(route, [{ subject: subjectOf("pole", id), what: "height", value }]));
          for (const spanId of plant.all("span")) {
            const [drawn, built] = [groundClearance(plant, spanId), groundClearance(builtPlant(plant), spanId)];
            if (drawn?.kind !== "known" || built?.kind !== "known") continue;
            for (const one of clearanceCases) expect(built.byCase[one]).toBeLessThanOrEqual(drawn.byCase[one] + 1e-9);
            spanCount += 1;
          }
        },
      ),
      { numRuns: 25 },
    );
    expect(spanCount).toBeGreaterThan(60);
  });

  it("drawn as it was built has of its own whatever was found as built, and nothing is found as built there any more", () => {
    fc.assert(
      fc.property(anyRoute, fc.array(anyRead, { maxLength: 6 }), (route, reads) => {
        const read = withRead(route, reads);
        const drawn = routeWith(read, asBuiltRows(read));
        expect(builtFindings(drawn)).toEqual([]);
        const own = new Set(findingsOf(drawn).map((one) => `${one.ruleId} ${one.measured?.toFixed(6)}`));
        const found = builtFindings(read).map(
          (one) => `${one.ruleId.slice("built-".length)} ${one.measured?.toFixed(6)}`,
        );
        expect(found.filter((one) => !own.has(one))).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  it("is found the same reading by reading, taken and taken back between edits, as all at once", () => {
    let foundCount = 0;
    const step = fc.oneof(
      { weight: 4, arbitrary: anyRead.map((read) => ({ kind: "read" as const, read })) },
      { weight: 1, arbitrary: anyRead.map((read) => ({ kind: "back" as const, read })) },
      {
        weight: 1,
        arbitrary: fc
          .record({
            id: fc.constantFrom("strand-2", "neutral-2", "telephone-4"),
            heightM: fc.double({ min: 4, max: 9, noNaN: true }),
          })
          .map((edit) => ({ kind: "edit" as const, ...edit })),
      },
    );
    fc.assert(
      fc.property(anyRoute, fc.array(step, { minLength: 1, maxLength: 10 }), (start, steps) => {
        let route = start;
        const checker = openChecker(openPlant(route));
        for (const one of steps) {
          const rows = rowsOf(route, one);
          route = routeWith(route, rows);
          checker.advance(route, rows);
        }
        expect(checker.findings()).toEqual(findingsOf(route));
        foundCount += checker.findings().filter((one) => builtIds.has(one.ruleId)).length;
      }),
      { numRuns: 30 },
    );
    expect(foundCount).toBeGreaterThan(30);
  });
});

type Step =
  | { readonly kind: "read" | "back"; readonly read: Read }
  | { readonly kind: "edit"; readonly id: string; readonly heightM: number };

function rowsOf(route: Route, step: Step): RowChange[] {
  if (step.kind === "edit") {
    const before = route.attachment.get(step.id);
    return before ? [rowEdit("attachment", before, { ...before, heightM: step.heightM })] : [];
  }
  const { subject, what, value } = step.read;
  const before = route.reading.get(readingId(subject, what)) ?? null;
  if (step.kind === "back") return before ? [rowEdit("reading", before, null)] : [];
  return [rowEdit("reading", before, readingRow(subject, what, value))];
}
