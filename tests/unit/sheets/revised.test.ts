import { describe, expect, it } from "vitest";
import { applyChange, invert } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import { sumChanges } from "../../../core/edits/sumChanges.ts";
import type { Route } from "../../../core/model/route.ts";
import type { RowChange } from "../../../core/model/rowChange.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { ArcMark } from "../../../core/sheets/paper/displayList.ts";
import { outsidePaper, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { changeGroups } from "../../../core/sheets/revised/changeLines.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

type Step = readonly [commandId: string, input: object];

/** A route after edits, and their sum. */
function edited(before: Route, steps: readonly Step[]): { readonly after: Route; readonly rows: readonly RowChange[] } {
  let after = before;
  const edits = steps.map(([commandId, input]) => {
    const done = findCommand(commandId)?.ask(after, input);
    if (!done?.ok) throw new Error(done?.fault.what ?? commandId);
    const next = applyChange(after, done.value);
    if (!next.ok) throw new Error(next.fault.what);
    after = next.value;
    return done.value.rows;
  });
  return { after, rows: sumChanges(edits) };
}

function told(steps: readonly Step[], before: Route = smallRoute()): Record<string, string[]> {
  const { after, rows } = edited(before, steps);
  const groups = changeGroups({ before: openPlant(before), after: openPlant(after) }, rows);
  return Object.fromEntries(groups.map(({ heading, lines }) => [heading, lines.map((one) => one.text)]));
}

describe("the list of changes", () => {
  it("tells a moved terminal by how far and towards which pole, and its coil with it", () => {
    const { spanId, offsetM } = terminal();
    const said = told([["terminal.move", { terminalId: "terminal-1", spanId, offsetM: offsetM + 4 }]]);
    expect(said.Terminals).toEqual([expect.stringMatching(/^Terminal T1 moved 13 ft towards pole P?\w+$/)]);
  });

  it("tells a moved drop by both its ports", () => {
    const drop = [...smallRoute().drop.values()].find((one) => one.terminalId === "terminal-1");
    const said = told([["drop.move", { dropId: drop?.id, terminalId: "terminal-2", port: 8 }]]);
    expect(said["Living units and drops"]).toEqual([
      expect.stringMatching(/^Drop to .+ moved from T1 port \d to T2 port 8$/),
    ]);
  });

  it("takes a terminal that was taken down and hung anew under its name for the same one", () => {
    const before = smallRoute();
    const old = before.terminal.get("terminal-1");
    if (!old) throw new Error("no terminal");
    const row = { ...old, id: "terminal-new", offsetM: old.offsetM + 4 };
    const rows: RowChange[] = [
      { table: "terminal", id: row.id, before: null, after: row },
      { table: "terminal", id: old.id, before: old, after: null },
    ];
    const after: Route = { ...before, terminal: new Map([[row.id, row]]) };
    const [group] = changeGroups({ before: openPlant(before), after: openPlant(after) }, rows);
    expect(group?.lines).toEqual([
      {
        text: expect.stringContaining("Terminal T1 moved 13 ft towards pole"),
        table: "terminal",
        id: row.id,
        isGone: false,
      },
    ]);
  });

  it("says that a terminal was pinned", () => {
    const said = told([["terminal.pin", { terminalId: "terminal-1", pinned: true }]]);
    expect(said).toEqual({ Terminals: ["Terminal T1: pinned"] });
  });

  it("tells a standard by its figures in the units of the route", () => {
    expect(told([["settings.set", { values: { sparePortCount: 3, dropReachM: 60.96 } }]])).toEqual({
      Standards: ["Drop reach from 300 ft 0 in to 200 ft 0 in", "Spare ports from 1 to 3"],
    });
  });
});

describe("clouds on a profile", () => {
  const before = windingRoute();
  const first = <T>(rows: ReadonlyMap<string, T>): T => {
    const [row] = rows.values();
    if (!row) throw new Error("the route has no such row");
    return row;
  };
  const cloudsAfter = (steps: readonly Step[]): readonly ArcMark[] => {
    const { after, rows } = edited(before, steps);
    const since = { letter: "B", before: openPlant(before), rows };
    const { sheets } = composeSet(openPlant(after), [], { kinds: ["profile"], revised: { revisionId: null, since } });
    expect(sheets.flatMap(overlaps)).toEqual([]);
    const [clouded] = sheets.filter((sheet) => sheet.marks.some((mark) => mark.layer === "revisions"));
    return (clouded?.marks ?? []).flatMap((mark) => (mark.kind === "arc" && mark.layer === "revisions" ? [mark] : []));
  };
  const sizeOf = (arcs: readonly ArcMark[]) => {
    const [xs, ys] = [0, 1].map((axis) => arcs.map((one) => one.centreMm[axis] ?? 0));
    return [xs, ys].map((all = []) => Math.max(...all) - Math.min(...all));
  };

  it("reach round a whole pole that changed, and closely round one attachment", () => {
    const pole = first(before.pole);
    const attachment = [...before.attachment.values()].find((one) => one.poleId === pole.id);
    const [poleWide = 0, poleHigh = 0] = sizeOf(
      cloudsAfter([["row.set", { table: "pole", id: pole.id, values: { aboveGroundM: 11.5 } }]]),
    );
    expect(poleHigh).toBeGreaterThan(4 * poleWide);
    const [wide = 0, high = 0] = sizeOf(
      cloudsAfter([["attachment.set", { attachmentId: attachment?.id, heightM: (attachment?.heightM ?? 0) + 0.1 }]]),
    );
    expect(Math.abs(wide - high)).toBeLessThan(1);
    expect(high).toBeLessThan(poleHigh / 4);
  });

  it("show what lies under a span, what hangs on it, and what is gone", () => {
    const crossing = first(before.crossing);
    const { id } = first(before.terminal);
    expect(cloudsAfter([["crossing.set", { crossingId: crossing.id, values: { name: "Mill Lane" } }]])).not.toEqual([]);
    expect(cloudsAfter([["terminal.rename", { terminalId: id, name: "T-900" }]])).not.toEqual([]);
    expect(cloudsAfter([["terminal.remove", { terminalId: id }]])).not.toEqual([]);
  });

  it("leave out what a profile does not show", () => {
    expect(cloudsAfter([["settings.set", { values: { sparePortCount: 3 } }]])).toEqual([]);
  });
});

describe("a set drawn after edits", () => {
  const before = windingRoute();
  const names = [...before.terminal.values()].slice(0, 9);
  const { after, rows } = edited(before, [
    ...names
      .slice(0, 6)
      .map(
        ({ id, spanId, offsetM }): Step => [
          "terminal.move",
          { terminalId: id, spanId, offsetM: offsetM > 5 ? offsetM - 3 : offsetM + 3 },
        ],
      ),
    ["terminal.remove", { terminalId: names[7]?.id }],
    ["terminal.rename", { terminalId: names[8]?.id, name: "T-900" }],
    ["settings.set", { values: { sparePortCount: 3 } }],
  ]);
  const since = { letter: "B", before: openPlant(before), rows };
  const set = composeSet(openPlant(after), [], { revised: { revisionId: null, since } });
  const textsOf = (index: number) =>
    set.sheets[index]?.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])) ?? [];

  it("clouds what changed on plan and profile, each cloud with its triangle, and lays no text over text", () => {
    const clouded = set.sheets.filter((one) => one.marks.some((mark) => mark.layer === "revisions"));
    expect(new Set(clouded.map((one) => one.kind))).toEqual(new Set(["cover", "plan", "profile"]));
    const triangles = clouded
      .filter((one) => one.kind !== "cover")
      .flatMap((one) => one.marks)
      .filter((mark) => mark.kind === "text" && mark.layer === "revisions");
    expect(triangles.length).toBeGreaterThan(2);
    expect(triangles.every((mark) => mark.kind === "text" && mark.text === "B+")).toBe(true);
    const own = set.sheets.filter((one) => ["cover", "revision", "plan", "profile"].includes(one.kind));
    expect(own.flatMap(overlaps)).toEqual([]);
    expect(own.flatMap(outsidePaper)).toEqual([]);
  });

  it("lists what changed with the sheets that show it", () => {
    const texts = textsOf(1);
    expect(texts).toContain("What changed since revision B");
    expect(texts.some((text) => text.startsWith(`Terminal ${names[7]?.name} taken down, 36 in from pole M`))).toBe(
      true,
    );
    const first = texts.findIndex((text) => text.startsWith(`Terminal ${names[0]?.name} moved`));
    const numbers = (texts[first + 1] ?? "").split(", ");
    expect(numbers.map((one) => set.sheets[Number(one) - 1]?.kind)).toEqual(["plan", "terminal"]);
  });

  it("says on every sheet that it comes after revision B and is preliminary", () => {
    for (const index of set.sheets.keys()) expect(textsOf(index)).toContain("After revision B");
    expect(textsOf(0)).toContain("Preliminary");
  });

  it("undone shows no cloud", () => {
    const back = invert({ label: "", author: "", atIso: "", rows });
    const undone = applyChange(after, back);
    if (!undone.ok) throw new Error(undone.fault.what);
    const none = composeSet(openPlant(undone.value), [], {
      revised: { revisionId: "revision-B", since: { ...since, rows: sumChanges([rows, back.rows]) } },
    });
    expect(
      none.sheets
        .filter((one) => one.kind === "plan")
        .flatMap((one) => one.marks)
        .some((mark) => mark.layer === "revisions"),
    ).toBe(false);
  });
});

function terminal() {
  const found = smallRoute().terminal.get("terminal-1");
  if (!found) throw new Error("the small route has no terminal");
  return found;
}
