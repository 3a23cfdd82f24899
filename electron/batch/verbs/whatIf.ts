import type { Variant } from "../../../core/edits/variantSteps.ts";
import { fail, ok, type Result, refused } from "../../../core/model/result.ts";
import { type ComparedLine, compareLayouts } from "../../../core/plant/layoutCompare.ts";
import { metresPerFoot } from "../../../core/units/constants.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { takeTrial, tryLayout } from "../../host/tryLayout.ts";
import { readLimits } from "../readLimits.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "what-if",
  usage:
    "FILE.strand [--spare PORTS] [--reach LENGTH] [--drop-price PER_FT_OR_M] [--price MODEL_ID=COST]... [--model MODEL_ID]... [--steps COUNT] [--seconds S] [--take]",
};

/** Lays a route out under other standards, prices or models, and prints both layouts side by side. */
export const whatIfVerb: Verb = {
  ...shape,
  help: "Lays out under other standards, prices or models and prints both layouts side by side; changes the file only with --take.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      spare: text,
      reach: text,
      "drop-price": text,
      price: { type: "string", multiple: true },
      model: { type: "string", multiple: true },
      steps: text,
      seconds: text,
      take: { type: "boolean" },
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const limits = readLimits(values);
    if (!limits.ok) return limits;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const { unitSystem } = session.plant.settings();
      const variant = readVariant(values, unitSystem);
      if (!variant.ok) return variant;
      const asked = { variant: variant.value, jobId: "what-if" };
      const tried = await tryLayout(session, desk.runJob, asked, { limits: limits.value });
      if (!tried.ok) return tried;
      const { reply, kept } = tried.value;
      const lines = compareLayouts(reply.present, reply.other, unitSystem);
      const taken = values.take ? takeTrial(session, kept, null) : null;
      if (taken && !taken.ok) return refused(taken.fault);
      const { present, other, ended } = reply;
      return ok({
        exitCode: 0,
        lines: [
          ...tableLines(lines),
          ...reply.leftOut.map((one) => `Not served: ${one.count}: ${one.reason}`),
          ...(taken ? [`Taken: ${taken.value.rows.length} rows written.`] : []),
        ],
        json: { present, other, ended, leftOut: reply.leftOut, taken: taken !== null },
      });
    });
  },
};

type Asked = {
  readonly spare?: string | undefined;
  readonly reach?: string | undefined;
  readonly "drop-price"?: string | undefined;
  readonly price?: string[] | undefined;
  readonly model?: string[] | undefined;
};

function readVariant(asked: Asked, units: UnitSystem): Result<Variant> {
  const bad = (option: string, text: string, mend: string): Result<never> =>
    fail("bad-arguments", `This cannot be read: ${text}.`, `--${option}`, mend);
  const number = (text: string): number => (text.trim() === "" ? Number.NaN : Number(text));
  const spare = asked.spare === undefined ? undefined : number(asked.spare);
  if (spare !== undefined && !(Number.isInteger(spare) && spare >= 0))
    return bad("spare", asked.spare ?? "", "Give a whole number of ports.");
  const reach = asked.reach === undefined ? undefined : parseLengthM(asked.reach, units);
  if (reach && !(reach.ok && reach.valueM > 0)) return bad("reach", asked.reach ?? "", "Give a length such as 250 ft.");
  const perUnit = asked["drop-price"] === undefined ? undefined : number(asked["drop-price"]);
  if (perUnit !== undefined && !(perUnit >= 0))
    return bad("drop-price", asked["drop-price"] ?? "", "Give a price by the foot, or by the metre on a metric route.");
  const prices = (asked.price ?? []).map((one) => one.split("=", 2));
  const odd = prices.find(([id, cost]) => !id || !(number(cost ?? "") >= 0));
  if (odd) return bad("price", odd.join("="), "Write a model's id, an equals sign and its price.");
  return ok({
    ...(spare !== undefined && { sparePortCount: spare }),
    ...(reach?.ok && { dropReachM: reach.valueM }),
    ...(perUnit !== undefined && { dropCostPerM: units === "us" ? perUnit / metresPerFoot : perUnit }),
    ...(prices.length > 0 && { modelCosts: Object.fromEntries(prices.map(([id, cost]) => [id, Number(cost)])) }),
    ...(asked.model && { modelIds: asked.model }),
  });
}

function tableLines(lines: readonly ComparedLine[]): string[] {
  const rows = [{ name: "", present: "As it is", other: "The other", more: "" }, ...lines];
  const width = (pick: (one: ComparedLine) => string) => Math.max(...rows.map((one) => pick(one).length));
  const [name, present, other] = [width((one) => one.name), width((one) => one.present), width((one) => one.other)];
  return rows.map((one) =>
    `${one.name.padEnd(name)}  ${one.present.padStart(present)}  ${one.other.padStart(other)}  ${one.more}`.trimEnd(),
  );
}
