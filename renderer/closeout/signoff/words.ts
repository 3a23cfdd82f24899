import type { Gate, Stage } from "../../../core/closeout/gates.ts";
import type { SignOff } from "../../../core/model/tables.ts";

const stageNames: Readonly<Record<Stage, string>> = { built: "Built", tested: "Tested", accepted: "Accepted" };

/** Words of the sign-off. */
export const signOffWords = {
  title: "Sign-off",
  show: "Show the sign-off",
  hide: "Put the sign-off away",
  stage: (stage: Stage): string => stageNames[stage],
  intro: "What must be so before the route is signed for. A finding may be waived with a reason; nothing else may.",
  open: "nothing missing",
  missing: (gate: Gate): string => `${gate.missing.length} missing`,
  more: (count: number): string => `and ${count} more`,
  nothing: "Nothing is on the route.",
  sign: (stage: Stage): string => `Sign for the route as ${stage}`,
  shut: "Something is missing still.",
  by: "Name",
  role: "Role",
  note: "Note",
  neededName: "A name is needed.",
  reopen: "Open the signed route again",
  letter: "New revision",
  reason: "Reason",
  neededReason: "A letter, a name and a reason are needed.",
  signedBy: ({ by, role, atIso }: SignOff): string => `${by}${role === "" ? "" : `, ${role}`}, ${atIso.slice(0, 10)}`,
  reopenedBy: ({ reopenedBy, reopenedIso, reopenReason }: SignOff): string =>
    `Opened again ${reopenedIso.slice(0, 10)} by ${reopenedBy}: ${reopenReason}`,
  digest: "Digest of every row",
  deliver: "Delivery",
  delivered:
    "The set as built with redlines, the closeout report with its tables, DXF and GeoJSON, traces, photos and the route file, with a manifest of their hashes, in one archive.",
  frozen: "The route is accepted and frozen: only opening it again changes it.",
  proof:
    "The digest stands for every row as it was signed, the journal for every edit since; both are held against the file whenever it is opened. Print the digest with the signature: without the paper, whoever works out every hash anew can forge a file.",
} as const;
