import { seededRandom } from "../fixtures/mangle.ts";
import { mangledKinds } from "../fixtures/mangledReaders.ts";

/**
 * Files hurt on their way, in long runs by hand: how each came out, the slowest by the processor's time, and the memory taken.
 *
 *     npm run -s bench mangled KIND[,KIND] [COUNT [SEED]]
 *
 * Stops at the first that makes a reader throw, and tells its number: the same seed comes to it again.
 */
const [, , , kinds = Object.keys(mangledKinds).join(","), count = "10000", seed = "1"] = process.argv;

for (const name of kinds.split(",")) {
  const kind = mangledKinds[name];
  if (!kind) throw new Error(`no such kind: ${name}; there are ${Object.keys(mangledKinds).join(", ")}`);
  const random = seededRandom(Number(seed));
  const outcomes: Record<string, number> = {};
  let slowestMs = 0;
  for (let number = 1; number <= Number(count); number += 1) {
    const bytes = kind.next(random);
    const start = process.cpuUsage();
    const outcome = await kind.take(bytes).catch((error: unknown) => {
      throw new Error(`${name}, seed ${seed}, number ${number}`, { cause: error });
    });
    const { user, system } = process.cpuUsage(start);
    slowestMs = Math.max(slowestMs, (user + system) / 1000);
    outcomes[outcome] = (outcomes[outcome] ?? 0) + 1;
  }
  const residentMb = process.resourceUsage().maxRSS / 1024;
  console.log(
    `${name}: ${count} files, slowest ${slowestMs.toFixed(0)} ms, at most ${residentMb.toFixed(0)} MB`,
    outcomes,
  );
}
