import { planted } from "../../assets/demo/planted.ts";
import { demoSurvey } from "../../assets/demo/survey.ts";
import type { Step } from "../../core/edits/runSteps.ts";
import { freshIds } from "../../core/model/freshId.ts";
import { ok, type Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { Session } from "./session.ts";

/**
 * Enters what the demo's surveyor noted beside the line, then sets the guys the program asks for, all but the one that
 * is missing on purpose.
 */
export function surveyDemo(session: Session): Result<unknown> {
  const noted = session.run("steps.run", { label: "Enter the survey notes", steps: surveySteps(session.route()) });
  if (!noted.ok) return noted;
  const unguyed = [...session.route().pole.values()].find((pole) => pole.tag === planted.unguyed.pole)?.id;
  const steps = session
    .findings()
    .filter((one) => one.ruleId === "guy-missing" && one.subjects[0]?.id !== unguyed)
    .flatMap(({ fixes }) =>
      fixes
        .slice(0, 1)
        .map(({ command, input }): Step => ({ command, input: { ...asObject(input), anchorN: demoSurvey.anchorN } })),
    );
  return steps.length === 0 ? ok(null) : session.run("steps.run", { label: "Set guys", steps });
}

function asObject(input: unknown): object {
  return typeof input === "object" && input !== null ? input : {};
}

function surveySteps(route: Route): Step[] {
  const structureId = freshIds(route, "structure");
  const wireSagId = freshIds(route, "wireSag");
  return [
    ...demoSurvey.structures.map(({ from, to, ...row }) => ({
      command: "structure.add",
      input: { ...row, structureId: structureId(), spanId: spanBetween(route, from, to) },
    })),
    ...demoSurvey.wireSags.map(({ from, to, ...row }) => ({
      command: "wireSag.add",
      input: { ...row, wireSagId: wireSagId(), spanId: spanBetween(route, from, to) },
    })),
  ];
}

function spanBetween(route: Route, fromTag: string, toTag: string): string {
  const tag = (poleId: string) => route.pole.get(poleId)?.tag;
  const span = [...route.span.values()].find((one) => tag(one.fromPoleId) === fromTag && tag(one.toPoleId) === toTag);
  if (!span) throw new Error(`the demo has no span from ${fromTag} to ${toTag}`);
  return span.id;
}
