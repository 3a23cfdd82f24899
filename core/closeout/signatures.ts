import type { Fault } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { SignOff } from "../model/tables.ts";

/** Signatures in the order they were made. */
export function signaturesOf(route: Route): readonly SignOff[] {
  return [...route.signOff.values()].sort((a, b) => a.number - b.number);
}

/** Whether a signature still stands; a route opened again has none. */
export function stands(signature: SignOff): boolean {
  return signature.reopenedBy === "";
}

/** Why a route may not be edited, once it is signed for as accepted; null while it may. */
export function frozenFault(route: Route): Fault | null {
  const accepted = signaturesOf(route).findLast((one) => one.stage === "accepted" && stands(one));
  if (!accepted) return null;
  return {
    code: "frozen",
    what: `The route was signed for as accepted by ${accepted.by} on ${accepted.atIso.slice(0, 10)}: it is frozen.`,
    where: "sign-off",
    mend: "To change it, open it again in the sign-off, with a reason: that begins a new revision.",
  };
}

/**
 * Why an edit may not be made on a route because of its signatures; null where it may. A signature is added and opened again, never changed,
 * taken back or removed; a frozen route takes nothing but its opening again.
 */
export function signatureFault(route: Route, rows: readonly RowChange[]): Fault | null {
  const isReopening = rows.some((row) => row.table === "signOff" && reopens(row.before, row.after));
  const frozen = frozenFault(route);
  if (frozen && !isReopening) return frozen;
  const changed = rows.find(
    // what is signed for is the route before the edit, so that the edit holds nothing else
    (row) => row.table === "signOff" && (row.before ? !reopens(row.before, row.after) : rows.length > 1),
  );
  if (!changed) return null;
  return {
    code: "signed",
    what: "A signature stays on record: it is neither changed nor taken back.",
    where: "sign-off",
    mend: "Open the route again in the sign-off, with a reason. What was edited before it was signed for is changed by hand.",
  };
}

function reopens(before: RowChange["before"], after: RowChange["after"]): boolean {
  if (!before || !after || !("reopenedBy" in before) || !("reopenedBy" in after)) return false;
  const { reopenedBy, reopenedIso, reopenReason } = after;
  const isSame = JSON.stringify({ ...before, reopenedBy, reopenedIso, reopenReason }) === JSON.stringify(after);
  return before.reopenedBy === "" && reopenedBy !== "" && isSame;
}

/** Whether a fault tells that a file was changed by other means than this program. */
export function isTampered(fault: Fault | null): boolean {
  return fault?.code === "journal-broken" || fault?.code === "rows-changed";
}
