import { freshIds } from "../../../core/model/freshId.ts";
import type { Route } from "../../../core/model/route.ts";
import type { TableName } from "../../../core/model/tables.ts";
import type { Point } from "../../../core/plant/geometry.ts";
import { runCommand } from "../../app/edits.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { openRouteOf, type Session, tell } from "../../app/session.ts";
import type { AddingForm, AddingState, AddingTool } from "./addingState.ts";
import type { Aim, SpanAim } from "./aim.ts";
import { betweenTag, freeLineName, nextTag } from "./freeTag.ts";
import { words } from "./words.ts";

/** What a click means with the tool in hand: an edit, the next step of one, or words why not. */
export async function clickWith(session: Session, adding: AddingState, aim: Aim): Promise<void> {
  switch (adding.tool) {
    case "pole":
      return clickPole(session, adding, aim);
    case "span":
      return clickSpan(session, adding, aim);
    case "lateral":
      return clickLateral(session, adding, aim);
    case "attachment":
      if (aim.poleId === null) return tell(session, words.needsPole);
      return ask(session, { kind: "attachment", poleId: aim.poleId });
    case "unit":
      if (isOffGround(session)) return;
      return ask(session, { kind: "unit", at: aim.point });
    case "terminal":
      return hangTerminal(session, adding, aim);
    case "crossing":
    case "structure":
      return tell(session, words.needsSpan);
    case "groundPoint":
      if (!aim.span) return tell(session, words.needsSpan);
      return ask(session, { kind: "groundPoint", spanId: aim.span.spanId, offsetM: aim.span.offsetM });
    case "guy":
      return clickGuy(session, adding, aim);
  }
}

/** Asks for the rest of what a click or a drag began. */
export function ask(session: Session, form: AddingForm): void {
  session.view.setState(({ adding }) => ({ adding: adding && { ...adding, form } }));
}

async function clickPole(session: Session, adding: AddingState, aim: Aim): Promise<void> {
  const { fromPoleId } = adding;
  if (aim.poleId !== null) return goOnFrom(session, aim.poleId);
  if (fromPoleId !== null) return extend(session, adding, fromPoleId, aim);
  if (aim.span) return split(session, aim.span);
  if (isOffGround(session)) return;
  const { route } = openRouteOf(session);
  const poleId = freshIds(route, "pole")();
  const { eastM, northM } = aim.point;
  const found = { groundM: null, aboveGroundM: null, poleClass: "", owner: "", line: "", order: 0, note: "" };
  const pole = { poleId, tag: nextTag(route, undefined), eastM, northM, terminalAllowed: true, ...found };
  await add(session, "pole.add", pole, "pole", poleId);
}

async function split(session: Session, { spanId, offsetM }: SpanAim): Promise<void> {
  const { route, plant } = openRouteOf(session);
  const first = plant.rowOf("pole", plant.rowOf("span", spanId).fromPoleId);
  const [poleId, nextSpanId] = [freshIds(route, "pole")(), freshIds(route, "span")()];
  const wanted = { spanId, offsetM, poleId, nextSpanId, tag: betweenTag(route, first.tag) };
  await add(session, "span.split", wanted, "pole", poleId);
}

async function clickSpan(session: Session, { fromPoleId }: AddingState, { poleId }: Aim): Promise<void> {
  if (poleId === null) return tell(session, words.needsPole);
  if (fromPoleId === null) return goOnFrom(session, poleId);
  if (poleId === fromPoleId) return tell(session, words.needsOtherPole);
  const { route } = openRouteOf(session);
  if (areJoined(route, fromPoleId, poleId)) return tell(session, words.joinedAlready);
  const spanId = freshIds(route, "span")();
  const span = {
    spanId,
    fromPoleId,
    toPoleId: poleId,
    lengthM: null,
    strandSectionId: null,
    origin: "drawn",
    note: "",
  };
  if (await add(session, "span.add", span, "span", spanId)) goOnFrom(session, poleId);
}

function areJoined(route: Route, a: string, b: string): boolean {
  return [...route.span.values()].some(
    (one) => (one.fromPoleId === a && one.toPoleId === b) || (one.fromPoleId === b && one.toPoleId === a),
  );
}

async function clickLateral(session: Session, adding: AddingState, aim: Aim): Promise<void> {
  const { fromPoleId } = adding;
  if (fromPoleId === null) {
    if (aim.poleId === null) return tell(session, words.needsPole);
    return goOnFrom(session, aim.poleId);
  }
  return extend(session, adding, fromPoleId, aim);
}

async function extend(session: Session, adding: AddingState, fromPoleId: string, aim: Aim): Promise<void> {
  if (isOffGround(session)) return;
  const wanted = extension(openRouteOf(session), adding.tool, fromPoleId, aim.point);
  if (await add(session, "pole.extend", wanted, "pole", wanted.poleId)) goOnFrom(session, wanted.poleId);
}

/** What sets the next pole of a line at a point, with a span between; a lateral begins a line of its own. */
export function extension({ route, plant }: OpenRoute, tool: AddingTool, fromPoleId: string, at: Point) {
  const from = plant.rowOf("pole", fromPoleId);
  const isUnderWay = from.line.startsWith("Lateral ") && from.order === 0;
  const line = tool === "lateral" && !isUnderWay ? freeLineName(route) : "";
  const [poleId, spanId] = [freshIds(route, "pole")(), freshIds(route, "span")()];
  const { eastM, northM } = at;
  return { fromPoleId, poleId, tag: nextTag(route, from.tag), eastM, northM, line, spanId };
}

function clickGuy(session: Session, { fromPoleId }: AddingState, { poleId, point }: Aim): void {
  if (isOffGround(session)) return;
  if (fromPoleId === null && poleId === null) tell(session, words.needsPole);
  else if (fromPoleId === null && poleId !== null) goOnFrom(session, poleId);
  else if (fromPoleId === null || poleId === fromPoleId) tell(session, words.needsAnchor);
  else ask(session, { kind: "guy", poleId: fromPoleId, at: point });
}

async function hangTerminal(session: Session, { modelId }: AddingState, { span }: Aim): Promise<void> {
  if (!span) return tell(session, words.needsSpan);
  const { route, plant } = openRouteOf(session);
  const terminalModelId = modelId ?? usualModelId(route);
  if (terminalModelId === null) return tell(session, words.noModel);
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", span.spanId);
  const poleId = span.offsetM <= lengthM / 2 ? fromPoleId : toPoleId;
  const terminalId = freshIds(route, "terminal")();
  const wanted = { terminalId, spanId: span.spanId, poleId, terminalModelId };
  await add(session, "terminal.hang", wanted, "terminal", terminalId);
}

/** The model most terminals of the route are, else the smallest of eight ports or more. */
export function usualModelId(route: Route): string | null {
  const counts = new Map<string, number>();
  for (const { terminalModelId } of route.terminal.values())
    counts.set(terminalModelId, (counts.get(terminalModelId) ?? 0) + 1);
  const [used] = [...counts].sort((a, b) => b[1] - a[1]);
  const bySize = [...route.terminalModel.values()].sort((a, b) => a.portCount - b.portCount);
  return used?.[0] ?? (bySize.find((one) => one.portCount >= 8) ?? bySize[0])?.id ?? null;
}

/** Carries out an edit that adds a row, and chooses the row. */
export function add(
  session: Session,
  commandId: string,
  input: object,
  table: TableName,
  id: string,
): Promise<boolean> {
  return runCommand(session, commandId, input, { view: { selection: [refKey(table, id)] } });
}

/** The tool goes on from a pole. */
export function goOnFrom(session: Session, fromPoleId: string): void {
  session.view.setState(({ adding }) => ({
    adding: adding && { ...adding, fromPoleId },
    selection: [refKey("pole", fromPoleId)],
  }));
}

function isOffGround(session: Session): boolean {
  if (session.view.getState().drawnAs === "ground") return false;
  tell(session, words.groundOnly);
  return true;
}
