import { expect, test } from "vitest";
import { hostOver } from "../../../renderer/app/hostClient.ts";

function answering(answer: unknown) {
  return hostOver({ call: async () => answer, on: () => () => {} });
}

test("an answer that fits the contract comes through as it is", async () => {
  const routes = [{ routeId: "route-1", fileName: "mill.strand", routeName: "Mill Creek" }];
  const answer = await answering({ ok: true, value: { routes } }).call("route.list", {});
  expect(answer).toEqual({ ok: true, value: { routes } });
});

test("a fault comes through with what, where and how to mend it", async () => {
  const fault = {
    code: "no-such-route",
    what: "That route is not open.",
    where: "route-9",
    mend: "Open the file again.",
  };
  expect(await answering({ ok: false, fault }).call("route.read", { routeId: "route-9" })).toEqual({
    ok: false,
    fault,
  });
});

test("an answer of another form is a fault that says so, never a half-read route", async () => {
  for (const strange of [null, "busy", { ok: true, value: { routes: [{ routeId: 4 }] } }, { value: {} }]) {
    const answer = await answering(strange).call("route.list", {});
    expect(answer.ok ? null : answer.fault.code).toBe("strange-answer");
  }
});

test("a host that does not answer is a fault, not an exception", async () => {
  const host = hostOver({
    call: async () => {
      throw new TypeError("fetch failed");
    },
    on: () => () => {},
  });
  const answer = await host.call("route.list", {});
  expect(answer.ok ? null : answer.fault).toMatchObject({ code: "host-away", where: "route.list" });
  expect(JSON.stringify(answer)).not.toContain("fetch failed");
});

test("an event the contract does not know is let go by", () => {
  let tell: (event: unknown) => void = () => {};
  const host = hostOver({
    call: async () => null,
    on: (listener) => {
      tell = listener;
      return () => {};
    },
  });
  const heard: string[] = [];
  host.on((event) => heard.push(event.kind));
  tell({ kind: "gossip" });
  tell({ kind: "progress", jobId: "j", doneCount: 1, totalCount: 2, words: "Writing sheets" });
  expect(heard).toEqual(["progress"]);
});
