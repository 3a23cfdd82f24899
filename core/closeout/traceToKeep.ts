import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { FiberEnd } from "../plant/fiberWay.ts";
import { readTrace } from "../traces/readTrace.ts";
import type { Damage } from "../traces/trace.ts";
import { guessFiber, type RouteNames } from "./guessFiber.ts";
import { type TraceRead, traceRead } from "./keptTrace.ts";

/** A reflectometer's file as it came. */
export type TraceFile = {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** Under which the route file keeps its bytes. */
  readonly keptHash: string;
};

/** What a person says of all files at once; null is left to the files. */
export type ToldOfAll = { readonly fromEnd: FiberEnd | null; readonly leadM: number | null };

/** A file ready for `trace.keep`, and what nobody knows of it yet. */
type TraceToKeep = TraceRead & {
  readonly fileName: string;
  readonly keptHash: string;
  readonly cableId: string | null;
  readonly fiber: number | null;
  readonly fromEnd: FiberEnd;
  readonly leadM: number | null;
};

export type TraceBrought = {
  readonly trace: TraceToKeep;
  /** What is to be asked: it is neither in the file, nor in its name, nor told. */
  readonly asks: readonly ("fiber" | "end")[];
  readonly damages: readonly Damage[];
  /** Who held the instrument, as the file tells; empty where it does not. */
  readonly operator: string;
};

/**
 * Reads a file and what it says of itself. Where fiber or end stay open it is of no fiber until somebody says so.
 *
 * @param isoOf  a moment as text, from seconds since 1970: core has no calendar
 * @returns a fault where the file is no reflectometer's
 */
export function traceToKeep(
  route: Route,
  { fileName, bytes, keptHash }: TraceFile,
  told: ToldOfAll,
  isoOf: (unixS: number) => string,
): Result<TraceBrought> {
  const read = readTrace(bytes);
  if (!read.ok) return read;
  const { general, fixed, damages } = read.value;
  const guess = guessFiber(fileName, general, namesOf(route));
  const fromEnd = told.fromEnd ?? guess.fromEnd;
  const asks = [
    ...(guess.cableId === null || guess.fiber === null ? (["fiber"] as const) : []),
    ...(fromEnd === null ? (["end"] as const) : []),
  ];
  const whose = asks.length === 0 ? { cableId: guess.cableId, fiber: guess.fiber } : { cableId: null, fiber: null };
  const takenIso = fixed && fixed.takenUnixS > 0 ? isoOf(fixed.takenUnixS) : "";
  return ok({
    trace: {
      ...traceRead(read.value, takenIso),
      fileName,
      keptHash,
      ...whose,
      fromEnd: fromEnd ?? "feed",
      leadM: told.leadM,
    },
    asks,
    damages,
    operator: general?.operator ?? "",
  });
}

function namesOf(route: Route): RouteNames {
  return {
    cables: [...route.cable.values()].map(({ id, name, cableTypeId }) => ({
      id,
      name,
      fiberCount: route.cableType.get(cableTypeId)?.fiberCount ?? 0,
    })),
    hubs: [...route.feed.values()].map((one) => one.name),
    places: [...route.terminal.values(), ...route.closure.values()].map((one) => one.name),
  };
}
