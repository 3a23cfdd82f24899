import { useEffect, useState } from "react";
import { useSession } from "./useSession.ts";

/** The company's logo as a data address; null where there is none, and until the host has answered. */
export function useLogo(routeId: string, logo: string): string | null {
  const { host } = useSession();
  const [read, setRead] = useState<{ readonly logo: string; readonly href: string | null } | null>(null);
  useEffect(() => {
    let isLeft = false;
    void host.call("logo.read", { routeId }).then((reply) => {
      if (reply.ok && !isLeft) setRead({ logo, href: reply.value.href });
    });
    return () => {
      isLeft = true;
    };
  }, [host, routeId, logo]);
  return logo !== "" && read?.logo === logo ? read.href : null;
}
