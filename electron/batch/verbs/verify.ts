import { ok } from "../../../core/model/result.ts";
import { openOrLook } from "../../host/openRoute.ts";
import { proofOf } from "../../host/proof.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "verify", usage: "FILE.strand" };

/** Tells whether a file is what its journal and signatures say. */
export const verifyVerb: Verb = {
  ...shape,
  help: "Reads the whole journal and holds every row, signature and kept file against it; tells the first thing that was changed outside the program. It proves nothing against somebody who works out every hash anew: hold the digests against the signed paper.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], {});
    if (!read.ok) return read;
    const session = openOrLook(read.value.positionals[0] ?? "", desk.stamp);
    if (!session.ok) return session;
    const proof = proofOf(session.value);
    session.value.close();
    const { broken, entryCount, newestHash, signatures } = proof;
    const fits = [
      `The ${entryCount} entries of the journal fit together, and the rows fit them.`,
      `Newest: ${newestHash}`,
    ];
    return ok({
      exitCode: broken ? 1 : 0,
      lines: [
        ...(broken ? [`${broken.what} (${broken.where})`, broken.mend] : fits),
        ...signatures.map(({ stage, by, atIso, digest }) => `Signed as ${stage} by ${by} at ${atIso}: ${digest}`),
      ],
      json: proof,
    });
  },
};
