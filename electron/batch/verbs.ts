import type { Verb } from "./verb.ts";
import { calcVerb } from "./verbs/calc.ts";
import { checkVerb } from "./verbs/check.ts";
import { closeoutVerb } from "./verbs/closeout.ts";
import { deliverVerb } from "./verbs/deliver.ts";
import { drawVerb } from "./verbs/draw.ts";
import { exportVerb } from "./verbs/export.ts";
import { importVerb } from "./verbs/import.ts";
import { layoutVerb } from "./verbs/layout.ts";
import { newVerb } from "./verbs/new.ts";
import { packetVerb } from "./verbs/packet.ts";
import { revisionVerb } from "./verbs/revision.ts";
import { serveVerb } from "./verbs/serve.ts";
import { standardsVerb } from "./verbs/standards.ts";
import { tracesVerb } from "./verbs/traces.ts";
import { verifyVerb } from "./verbs/verify.ts";
import { whatIfVerb } from "./verbs/whatIf.ts";

/** Every verb, in the order of the work. */
export const verbs: readonly Verb[] = [
  newVerb,
  standardsVerb,
  importVerb,
  layoutVerb,
  whatIfVerb,
  checkVerb,
  closeoutVerb,
  tracesVerb,
  revisionVerb,
  drawVerb,
  deliverVerb,
  exportVerb,
  packetVerb,
  verifyVerb,
  calcVerb,
  serveVerb,
];
