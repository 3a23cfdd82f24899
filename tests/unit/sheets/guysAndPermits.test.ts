import { describe, expect, it } from "vitest";
import { makeReady } from "../../../core/jointpole/makeReady.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { guyTensionN } from "../../../core/plant/poleGuys.ts";
import type { SheetKind } from "../../../core/sheets/book.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { outsidePaper, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { changed, withRows } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const textsOf = (route: Route, kind: SheetKind) =>
  composeSet(openPlant(route), [], { kinds: [kind] }).sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

const bare = windingRoute();
const guyed = withRows(bare, "guy", [
  {
    id: "guy-1",
    poleId: "pole-M001",
    strandTypeId: "strand-quarter",
    heightM: 6.2,
    leadM: 6.2,
    directionRad: Math.PI + 0.35,
    anchorN: 20_000,
    note: "",
  },
]);
const built = withRows(
  guyed,
  "structure",
  [
    {
      id: "barn",
      spanId: "span-line0-001",
      name: "Old barn",
      kind: "building",
      offsetM: 15,
      lengthM: 8,
      besideM: 3,
      side: "left",
      heightM: 5,
      bottomM: null,
    },
  ],
  "groundPoint",
  [{ id: "level-1", spanId: "span-line0-003", offsetM: 12, groundM: 101.5 }],
);

describe("guys on the drawings", () => {
  it("stand in the schedule with their tension and the part of their strength", () => {
    const plant = openPlant(guyed);
    const guyN = guyTensionN(plant, "guy-1", "loaded") ?? 0;
    expect(guyN).toBeGreaterThan(0);
    const texts = textsOf(guyed, "guy");
    expect(texts).toContain("Guys and anchors: 1");
    for (const strengthN of [plant.rowOf("strandType", "strand-quarter").breakingN, 20_000])
      expect(texts.some((text) => text.replace("◆ ", "") === ((guyN / strengthN) * 100).toFixed(1))).toBe(true);
  });

  it("are asked for where the strand ends and nobody set one", () => {
    const wanted = (route: Route) =>
      textsOf(route, "guy").filter((text) => text.startsWith("M1: the strand dead-ends"));
    expect(wanted(bare)).toHaveLength(1);
    expect(wanted(guyed)).toHaveLength(0);
  });

  it("have sheets of their own where many are wanted, every pole once", () => {
    const turning = changed(bare, "settings", "settings", { unguyedAngleRad: 1e-9 });
    const { sheets } = composeSet(openPlant(turning), [], { kinds: ["guy"] });
    const texts = textsOf(turning, "guy");
    const wanted = texts.filter((text) => text === "dead-ends" || text.startsWith("turns by "));
    expect(wanted.length).toBeGreaterThan(20);
    expect(sheets[0]?.title).toContain(`Guys wanted at ${wanted.length} poles`);
    expect(texts.some((text) => text.includes("a guy is wanted towards"))).toBe(false);
  });

  it("are drawn on the plan with their lead, beside buildings and levelled ground", () => {
    const texts = textsOf(built, "plan");
    expect(texts).toContain(`lead ${formatLength(6.2, "us", "height")}`);
    expect(texts).toContain(`Old barn, ${formatLength(3, "us", "height")} left`);
    expect(texts).toContain(formatLength(101.5, "us", "height"));
    expect(texts).not.toContain("ground not measured");
    const unmeasured = changed(built, "pole", "pole-M001", { groundM: null });
    expect(textsOf(unmeasured, "plan")).toContain("ground not measured");
  });

  it("leave no text over text", () => {
    const { sheets } = composeSet(openPlant(built), []);
    expect(sheets.flatMap(overlaps).map((one) => [one.sheet, one.first.text, one.second.text])).toEqual([]);
    expect(sheets.flatMap(outsidePaper)).toEqual([]);
  });
});

describe("the pole permit list", () => {
  it("tells the height our strand asks for at every pole it comes by", () => {
    const texts = textsOf(bare, "permit");
    const poles = [...bare.pole.values()].filter((pole) => texts.some((text) => text.startsWith(`${pole.tag}   `)));
    expect(poles).toHaveLength(bare.pole.size);
    expect(texts.filter((text) => text === "strand, new")).toHaveLength(bare.pole.size);
  });

  it("says up where a pole lower than its neighbours is pulled up, and no force is below nothing", () => {
    const sunk = changed(bare, "pole", "pole-M002", { groundM: (bare.pole.get("pole-M002")?.groundM ?? 0) - 12 });
    const loads = textsOf(sunk, "permit").filter((text) => text.includes("our line loaded"));
    expect(loads.find((text) => text.startsWith("M2   "))).toMatch(/loaded: [\d,]+ lbf up, /);
    expect(loads.filter((text) => /-\d/.test(text.split("loaded: ")[1] ?? ""))).toEqual([]);
  });

  it("gives the moves of others that make room, existing and proposed", () => {
    const crowded = changed(bare, "attachment", "phone-pole-M002", { heightM: 6.1 });
    const ready = makeReady(openPlant(crowded), "pole-M002");
    if (ready.kind !== "moves" && ready.kind !== "oursAlone") throw new Error(`nothing to move: ${ready.kind}`);
    const texts = textsOf(crowded, "permit");
    const oursM = ready.kind === "moves" ? ready.best.ourHeightM : ready.ourHeightM;
    expect(texts).toContain(formatLength(oursM, "us", "height"));
    expect(texts.some((text) => text.startsWith("◆ "))).toBe(true);
  });

  it("says how many of the limits nobody has read", () => {
    const limits = [...bare.clearanceLimit].map(([id, row]) => [id, { ...row, basisMark: "memory" as const }] as const);
    const texts = textsOf({ ...bare, clearanceLimit: new Map(limits) }, "permit");
    expect(texts.some((text) => text.includes(`${limits.length} of its ${limits.length} limits from memory`))).toBe(
      true,
    );
  });
});
