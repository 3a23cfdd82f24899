import { useEffect, useState } from "react";
import { useSession } from "../app/useSession.ts";

/** Bytes kept in the route file as an address the page can show; null until they are here. */
export function useKeptUrl(routeId: string, hash: string | null): string | null {
  const { host } = useSession();
  const [read, setRead] = useState<{ readonly hash: string; readonly url: string } | null>(null);
  useEffect(() => {
    if (hash === null) return undefined;
    let isWanted = true;
    void host.call("kept.read", { routeId, hash }).then((reply) => {
      if (isWanted && reply.ok) setRead({ hash, url: `data:image/jpeg;base64,${reply.value.bytesBase64}` });
    });
    return () => {
      isWanted = false;
    };
  }, [host, routeId, hash]);
  return read?.hash === hash ? read.url : null;
}
