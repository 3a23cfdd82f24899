import { expect, test } from "vitest";
import { fail } from "../../../core/model/result.ts";
import { actions } from "../../../renderer/app/actions.ts";
import type { HostClient } from "../../../renderer/app/hostClient.ts";
import { openSession } from "../../../renderer/app/session.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windowOn } from "./windowOn.ts";

const deafHost: HostClient = {
  call: async (method) => fail("away", "Nobody answers.", method, "Start the program again."),
  on: () => () => {},
};

test("without a route every action that needs one says so, and none is nameless", () => {
  const session = openSession(deafHost);
  expect(actions.every((one) => one.name(session).length > 3)).toBe(true);
  const free = actions.filter((one) => one.blocked(session) === null).map((one) => one.id);
  expect(free.sort()).toEqual(["find", "help", "keys", "open", "rules", "text", "theme"]);
});

test("undo names the step it takes back", () => {
  const { session } = windowOn(smallRoute(), { undo: "Move terminal T1", redo: null });
  const undo = actions.find((one) => one.id === "undo");
  expect(undo?.name(session)).toBe("Undo move terminal T1");
  expect(undo?.blocked(session)).toBeNull();
  expect(actions.find((one) => one.id === "redo")?.blocked(session)).toBe("Nothing to redo.");
});

test("while long work is under way no other begins, and edits wait where they would spoil it", () => {
  const { session } = windowOn(smallRoute(), { undo: "Move terminal T1", redo: null });
  const job = {
    jobId: "j",
    name: "Draw the set",
    doneCount: 0,
    totalCount: 0,
    words: "",
    isCancelling: false,
    holdsEdits: false,
    stop: "Cancel",
  };
  session.view.setState({ job });
  const blocked = (id: string) => actions.find((one) => one.id === id)?.blocked(session);
  const wait = 'Wait for "Draw the set" to end, or stop it.';
  expect([blocked("layout"), blocked("undo"), blocked("units")]).toEqual([wait, null, null]);
  session.view.setState({ job: { ...job, holdsEdits: true } });
  expect([blocked("layout"), blocked("undo"), blocked("units")]).toEqual([wait, wait, wait]);
});
