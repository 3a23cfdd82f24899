import type { Problem } from "../../core/placement/problem.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";

/**
 * A street made anew, of a kind named on the command line.
 *
 * @throws where there is no such kind, with those there are
 */
export function namedStreet(kind: string, unitCount: number, seed: number): Problem {
  const wishes = Object.entries(streetKinds).find(([name]) => name === kind)?.[1];
  if (!wishes) throw new Error(`no kind of street ${kind}: ${Object.keys(streetKinds).join(", ")}`);
  if (!(unitCount > 0)) throw new Error(`no number of units: ${unitCount}`);
  return madeStreet({ ...wishes, unitCount, seed });
}
