import { readingId, subjectOf } from "../../core/closeout/subject.ts";
import { applyChange } from "../../core/edits/change.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { type Figures, medianMs } from "./measure.ts";

const editCount = 40;

type Recheck = { readonly medianMs: number; readonly askedCount: number };

type Measured = {
  readonly fullMs: number;
  readonly terminal: Recheck;
  readonly attachment: Recheck;
  readonly reading: Recheck;
};

/**
 * Full check of a route, and the recheck after one terminal, and after one attachment of ours, has been moved by an inch, and after one
 * strand was read an inch lower than drawn.
 */
export async function measureRecheck(route: Route): Promise<Measured> {
  const fullMs = await medianMs(
    3,
    () => openPlant(route),
    (plant) => openChecker(plant).findings(),
  );
  const recheck = recheckOf(route);
  const ours = [...route.attachment.values()].filter((one) => one.kind === "ourStrand");
  return {
    fullMs,
    terminal: await recheck([...route.terminal.values()], (before) => ({
      table: "terminal",
      id: before.id,
      before,
      after: { ...before, offsetM: before.offsetM + 0.0254 },
    })),
    attachment: await recheck(ours, (before) => ({
      table: "attachment",
      id: before.id,
      before,
      after: { ...before, heightM: before.heightM + 0.0254 },
    })),
    reading: await recheck([...route.pole.values()], ({ id: poleId }) => {
      const subject = subjectOf("pole", poleId);
      const id = readingId(subject, "height");
      const ours = route.attachment.get(`att-${poleId.slice("pole-".length)}-ourStrand`);
      const read = { what: "height", wavelengthNm: 0, value: (ours?.heightM ?? 0) - 0.0254, text: "" } as const;
      const byHand = { by: "Crew", atIso: "2030-01-01", packetId: null, madeOn: "" };
      const after = { id, ...subject, ...read, ...byHand };
      return { table: "reading", id, before: null, after };
    }),
  };
}

/** Edits rows of a route from the middle of their table on, one at a time, and measures what checking after each takes. */
function recheckOf(route: Route) {
  const checker = openChecker(openPlant(route));
  let present = route;
  return async <T extends { readonly id: string }>(rows: T[], edit: (row: T) => RowChange): Promise<Recheck> => {
    let askedCount = 0;
    const recheckMs = await medianMs(
      editCount,
      () => {
        const before = rows.splice(Math.floor(rows.length / 2), 1)[0];
        if (!before) throw new Error("the route has too few rows to edit");
        const edited = [edit(before)];
        const next = applyChange(present, { rows: edited });
        if (!next.ok) throw new Error(next.fault.what);
        present = next.value;
        return edited;
      },
      (edited) => {
        askedCount = Math.max(askedCount, checker.advance(present, edited).askedCount);
      },
    );
    return { medianMs: recheckMs, askedCount };
  };
}

/** Figures of the recheck on a short and a long route: what it costs against a full check, and whether it grows. */
export async function benchRecheck(short: Route, long: Route): Promise<Figures> {
  const few = await measureRecheck(short);
  const many = await measureRecheck(long);
  return {
    fullCheckMs: many.fullMs,
    recheckAfterOneEditMs: many.terminal.medianMs,
    recheckOverFullCheck: many.terminal.medianMs / many.fullMs,
    recheckGrowthTenTimesTheRoute: many.terminal.medianMs / few.terminal.medianMs,
    rowsAskedAfterOneEdit: many.terminal.askedCount,
    recheckAfterAttachmentMs: many.attachment.medianMs,
    recheckAfterAttachmentOverFullCheck: many.attachment.medianMs / many.fullMs,
    recheckAfterAttachmentGrowthTenTimesTheRoute: many.attachment.medianMs / few.attachment.medianMs,
    rowsAskedAfterAttachment: many.attachment.askedCount,
    recheckAfterReadingMs: many.reading.medianMs,
    recheckAfterReadingOverFullCheck: many.reading.medianMs / many.fullMs,
    recheckAfterReadingGrowthTenTimesTheRoute: many.reading.medianMs / few.reading.medianMs,
    rowsAskedAfterReading: many.reading.askedCount,
  };
}
