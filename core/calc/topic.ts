import type { z } from "zod";
import type { Answer } from "./answer.ts";
import { requestFault } from "./requestFault.ts";

/** A loading district that a request may name. */
export type CalcDistrict = {
  readonly name: string;
  readonly iceM: number;
  readonly iceDensityKgPerM3: number;
  readonly windPa: number;
  readonly constantNPerM: number;
  readonly temperatureDegC: number;
  readonly basisDocument: string;
  readonly basisClause: string;
  readonly basisEdition: string;
  readonly basisMark: string;
};

/** What a request may name instead of giving its figures. */
export type CalcCatalogue = { readonly districts: readonly CalcDistrict[] };

/** Seconds since some moment. Handed in: a search that may take long ends by it, and nothing but its end depends on it. */
type Clock = () => number;

/** What a topic may look at besides its request. */
export type CalcAround = { readonly catalogue: CalcCatalogue; readonly clock: Clock };

const nothingAround: CalcAround = { catalogue: { districts: [] }, clock: () => 0 };

/** One formula of the program that can be run by itself. */
export type Topic = {
  readonly id: string;
  readonly title: string;
  readonly request: z.ZodType;
  readonly reply: z.ZodType;
  /** a request that is answered */
  readonly example: unknown;
  /** never throws for a bad request; without a clock a search goes on to its end */
  readonly run: (input: unknown, around?: Partial<CalcAround>) => Answer<unknown>;
};

/** What a topic's file says of it; the types of `answer` follow from the two schemas. */
type TopicDefinition<Request extends z.ZodType, Reply extends z.ZodType, Answered> = {
  readonly id: string;
  readonly title: string;
  readonly request: Request;
  readonly reply: Reply;
  readonly example: z.input<Request>;
  readonly answer: (request: z.output<Request>, around: CalcAround) => Answered;
};

/** Makes a topic that checks its request before the kernel sees it. */
export function defineTopic<Request extends z.ZodType, Reply extends z.ZodType>(
  definition: TopicDefinition<Request, Reply, z.input<Reply>>,
): Topic {
  return defineSearchTopic({
    ...definition,
    answer: (request: z.output<Request>, around) => ({ ok: true, value: definition.answer(request, around) }),
  });
}

/** Makes a topic whose kernel searches for its answer and may not find it. */
export function defineSearchTopic<Request extends z.ZodType, Reply extends z.ZodType>(
  definition: TopicDefinition<Request, Reply, Answer<z.input<Reply>>>,
): Topic {
  const { id, title, request, reply, example } = definition;
  return {
    id,
    title,
    request,
    reply,
    example,
    run(input, around) {
      const parsed = request.safeParse(input, { reportInput: true });
      if (!parsed.success) return { ok: false, fault: requestFault(id, parsed.error) };
      try {
        const answer = definition.answer(parsed.data, { ...nothingAround, ...around });
        return answer.ok
          ? answer
          : {
              ok: false,
              fault: { ...answer.fault, where: answer.fault.where.startsWith(`${id}.`) ? answer.fault.where : id },
            };
      } catch (error) {
        // A kernel's RangeError is a program error elsewhere. Here the numbers came from outside, and some limits depend on several of
        // them at once, so that no schema can hold them.
        if (!(error instanceof RangeError)) throw error;
        return {
          ok: false,
          fault: {
            code: "out-of-range",
            what: `${error.message}.`,
            where: id,
            mend: "Change the figures so that they fit together.",
          },
        };
      }
    },
  };
}
