import { lookOnlyReason } from "./files.ts";
import { useSession, useView } from "./useSession.ts";

/** Why the route shown may not be changed, or null; for controls that would change it. */
export function useLookOnly(): string | null {
  const session = useSession();
  return useView(() => lookOnlyReason(session));
}
