import { lookOnlyReason } from "./files.ts";
import { useTold } from "./useSession.ts";

/** Why the route shown may not be changed, or null; for controls that would change it. */
export function useLookOnly(): string | null {
  return useTold(lookOnlyReason);
}
