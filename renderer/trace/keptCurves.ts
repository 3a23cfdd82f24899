import { useEffect, useState } from "react";
import { readTrace } from "../../core/traces/readTrace.ts";
import type { Trace } from "../../core/traces/trace.ts";
import { bytesOf } from "../app/handOver.ts";
import type { Session } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";

/** Files read from the route file, by hash: their bytes never change. The oldest go first. */
const known = new Map<string, Trace>();
const mostKnown = 24;

/** Files of traces by hash, as far as they have come in; those that cannot be read are not among them. */
export function useKeptTraces(routeId: string, hashes: readonly string[]): ReadonlyMap<string, Trace> {
  const session = useSession();
  const [, setCount] = useState(0);
  const wanted = hashes.join(" ");
  useEffect(() => {
    let isHere = true;
    for (const hash of wanted.split(" ").filter((one) => one !== "" && !known.has(one)))
      void readKept(session, routeId, hash).then(() => isHere && setCount((count) => count + 1));
    return () => {
      isHere = false;
    };
  }, [session, routeId, wanted]);
  return new Map(hashes.flatMap((hash) => (known.has(hash) ? [[hash, known.get(hash) as Trace] as const] : [])));
}

async function readKept(session: Session, routeId: string, hash: string): Promise<void> {
  const kept = await session.host.call("kept.read", { routeId, hash });
  const read = kept.ok ? readTrace(bytesOf(kept.value.bytesBase64)) : null;
  if (!read?.ok) return;
  known.set(hash, read.value);
  for (const oldest of [...known.keys()].slice(0, Math.max(0, known.size - mostKnown))) known.delete(oldest);
}
