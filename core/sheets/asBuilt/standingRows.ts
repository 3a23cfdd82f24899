import { closeoutBoard } from "../../closeout/board.ts";
import { gatesBefore } from "../../closeout/gates.ts";
import { signaturesOf, stands } from "../../closeout/signatures.ts";
import { thingName } from "../../closeout/thingName.ts";
import { builtKindWords } from "../../closeout/words.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Finding } from "../../rules/finding.ts";
import { figure } from "../paper/figure.ts";
import type { Schedule } from "../schedule/schedule.ts";

/** How far the route has come: gate by gate, then kind by kind. */
export function gateSchedule(plant: Plant, findings: readonly Finding[]): Schedule {
  const stageNames = { built: "Built", tested: "Tested", accepted: "Accepted" } as const;
  const gates = gatesBefore(plant, "accepted", findings);
  const rows = (["built", "tested", "accepted"] as const).flatMap((stage) => [
    { group: `Before it is signed for as ${stage}`, of: stageNames[stage] },
    ...gates
      .filter((one) => one.stage === stage)
      .map(({ title, missing }) => ({
        cells: [title, missing.length === 0 ? "nothing missing" : "◆ missing", figure(missing.length, 0)],
      })),
  ]);
  return {
    name: "Gates",
    grouped: "Stage",
    columns: [
      { heading: "What must be so", share: 150 },
      { heading: "Stands", share: 40 },
      { heading: "Missing", share: 24, align: "right" },
    ],
    rows,
    notes: [],
  };
}

/** Things of the route by kind and how far they have come. */
export function kindSchedule(plant: Plant): Schedule {
  const reached = ["issued", "built", "tested", "accepted"] as const;
  const rows = closeoutBoard(plant, "").kinds.map(({ kind, count, byState, askedCount, missingCount }) => ({
    cells: [
      builtKindWords[kind].many,
      figure(count, 0),
      // a state takes in those before it
      ...reached.map((_, at) =>
        figure(
          reached.slice(at).reduce((sum, one) => sum + byState[one], 0),
          0,
        ),
      ),
      figure(askedCount - missingCount, 0),
      figure(askedCount, 0),
    ],
  }));
  return {
    name: "Built things",
    grouped: "",
    columns: [
      { heading: "Kind", share: 46 },
      { heading: "On the route", share: 24, align: "right" },
      { heading: "Issued", share: 20, align: "right" },
      { heading: "Built", share: 20, align: "right" },
      { heading: "Tested", share: 20, align: "right" },
      { heading: "Accepted", share: 20, align: "right" },
      { over: "Readings", heading: "taken", share: 22, align: "right" },
      { over: "Readings", heading: "asked", share: 22, align: "right" },
    ],
    rows,
    notes: [],
  };
}

/** The punch list, open items first. */
export function punchSchedule(plant: Plant): Schedule {
  const items = plant
    .all("punch")
    .map((id) => plant.rowOf("punch", id))
    .sort((a, b) => a.number - b.number);
  const rowOf = (one: (typeof items)[number]) => ({
    cells: [
      figure(one.number, 0),
      thingName(plant, one),
      one.what,
      one.assignedTo,
      one.dueIso.slice(0, 10),
      one.doneBy === ""
        ? "◆ open"
        : `${one.doneBy}, ${one.doneIso.slice(0, 10)}${one.doneNote === "" ? "" : `: ${one.doneNote}`}`,
    ],
  });
  const open = items.filter(({ doneBy }) => doneBy === "").map(rowOf);
  const done = items.filter(({ doneBy }) => doneBy !== "").map(rowOf);
  return {
    name: "Punch list",
    grouped: "Standing",
    columns: [
      { heading: "No.", share: 14, align: "right" },
      { heading: "Where", share: 56 },
      { heading: "What", share: 96 },
      { heading: "Assigned to", share: 34 },
      { heading: "Due", share: 24 },
      { heading: "Done", share: 80 },
    ],
    rows: [
      ...(open.length > 0 ? [{ group: `Open: ${open.length}`, of: "open" }, ...open] : []),
      ...(done.length > 0 ? [{ group: `Done: ${done.length}`, of: "done" }, ...done] : []),
    ],
    notes: [],
  };
}

/** Who signed for what, with the digest of the rows signed for. */
export function signatureSchedule(plant: Plant): Schedule {
  const rows = signaturesOf(plant.route()).map((one) => ({
    cells: [
      one.stage,
      one.by,
      one.role,
      one.atIso.slice(0, 10),
      one.note,
      stands(one) ? "stands" : `opened again ${one.reopenedIso.slice(0, 10)} by ${one.reopenedBy}: ${one.reopenReason}`,
      one.digest,
    ],
  }));
  return {
    name: "Signatures",
    grouped: "",
    columns: [
      { heading: "Signed for as", share: 24 },
      { heading: "By", share: 40 },
      { heading: "Role", share: 34 },
      { heading: "On", share: 24 },
      { heading: "Note", share: 50 },
      { heading: "Stands", share: 60 },
      { heading: "Digest of every row, SHA-256", share: 108 },
    ],
    rows,
    notes: [
      "The digest stands for every row of the route file as it was signed. The program holds it against the file whenever it is opened; on signed paper it proves the file, for whoever works out every hash anew can forge a file, not the paper.",
    ],
  };
}
