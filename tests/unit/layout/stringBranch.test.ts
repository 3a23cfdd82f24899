import { describe, expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { stringBranch } from "../../../core/layout/stringBranch.ts";
import type { Route } from "../../../core/model/route.ts";
import { cablePath } from "../../../core/plant/cablePath.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";

const strung = strungTown({ poleCount: 5, laterals: [], unitsPerSpan: 1 });

/** The strung main line with spans drawn by hand: each from a pole to a new one 40 m off. */
function drawn(...spans: readonly (readonly [from: string, to: string])[]): Route {
  return spans.reduce((route, [from, to], index) => {
    const near = route.pole.get(from);
    const span = route.span.get("span-1");
    if (!near || !span) throw new Error("the town has no such pole");
    const pole = { ...near, id: to, tag: to, line: to.split("-")[0] ?? "", northM: near.northM + 40 };
    const far = route.pole.has(to) ? [] : [pole];
    const bare = { ...span, id: `hand-${index + 1}`, fromPoleId: from, toPoleId: to, strandSectionId: null };
    return withRows(route, "pole", far, "span", [bare]);
  }, strung);
}

function after(route: Route, spanId: string): Route {
  const rows = stringBranch(route, spanId);
  if (!rows.ok) throw new Error(rows.fault.what);
  const next = applyChange(route, { rows: rows.value });
  if (!next.ok) throw new Error(next.fault.what);
  return next.value;
}

describe("spans drawn by hand from a pole within the line", () => {
  const route = after(drawn(["M-3", "K-1"], ["K-1", "K-2"]), "hand-2");
  const lateral = [...route.cable.values()].find((one) => one.fromClosureId !== null);

  test("get strand, our attachments and a lateral cable of the type of the one they leave", () => {
    expect(["hand-1", "hand-2"].map((id) => route.span.get(id)?.strandSectionId ?? null)).not.toContain(null);
    expect([...route.attachment.values()].map((one) => one.poleId)).toEqual(expect.arrayContaining(["K-1", "K-2"]));
    expect(lateral).toMatchObject({ name: "K", cableTypeId: route.cable.get("cable-1")?.cableTypeId });
    expect(cablePath(openPlant(route), lateral?.id ?? "").steps.map((one) => one.outPoleId)).toEqual(["K-1", "K-2"]);
  });

  test("are spliced on at a closure of the cable they leave, at their pole", () => {
    const closure = route.closure.get(lateral?.fromClosureId ?? "");
    expect(closure).toMatchObject({ cableId: "cable-1", note: expect.stringContaining("M3") });
  });

  test("leave no finding of a cable whose way is broken or of a span without strand", () => {
    expect(
      ["cable-path-broken", "span-unstrung", "span-without-strand"].flatMap((id) => findingsOf(route, id)),
    ).toEqual([]);
  });
});

test("spans drawn on from the last pole are strung with the cable that ends there", () => {
  const route = after(drawn(["M-5", "M-6"], ["M-6", "M-7"]), "hand-1");
  expect(route.cable.size).toBe(strung.cable.size);
  expect(cablePath(openPlant(route), "cable-1").steps.map((one) => one.outPoleId)).toEqual([
    "M-2",
    "M-3",
    "M-4",
    "M-5",
    "M-6",
    "M-7",
  ]);
});

test("a lateral of a new lateral is spliced on the new one", () => {
  const route = after(drawn(["M-3", "K-1"], ["K-1", "K-2"], ["K-1", "J-1"]), "hand-1");
  const [j] = [...route.cable.values()].filter((one) => one.name === "J");
  const [k] = [...route.cable.values()].filter((one) => one.name === "K");
  expect(route.closure.get(j?.fromClosureId ?? "")?.cableId).toBe(k?.id);
});

test("spans that meet the cable at two poles, or at none, are refused with the poles named", () => {
  const ring = drawn(["M-2", "K-1"], ["K-1", "M-4"]);
  const answer = stringBranch(ring, "hand-1");
  expect(answer).toMatchObject({ ok: false, fault: { code: "loop" } });
  expect(answer.ok ? "" : answer.fault.what).toMatch(/M2.*M4/);
  expect(stringBranch(drawn(["M-3", "K-1"]), "span-1")).toMatchObject({ ok: false, fault: { code: "strung" } });
  const apart = withRows(drawn(["M-3", "K-1"], ["K-1", "K-2"]), "span", []);
  const cutOff = { ...apart, span: new Map([...apart.span].filter(([id]) => id !== "hand-1")) };
  expect(stringBranch(cutOff, "hand-2")).toMatchObject({ ok: false, fault: { code: "no-cable-met" } });
});
