import { expect, test } from "vitest";
import { contract } from "../../core/contract/contract.ts";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { type Handlers, serve } from "../../electron/host/serve.ts";

function quietHost() {
  return openHost({ runJob: runJobHere, report: () => {} });
}

test("a method nobody wrote is a fault that names it", async () => {
  expect(await quietHost().call("route.burn", {})).toMatchObject({
    ok: false,
    fault: { code: "unknown-method", where: "route.burn" },
  });
});

test("a name every object has is not a method", async () => {
  expect(await quietHost().call("toString", {})).toMatchObject({ ok: false, fault: { code: "unknown-method" } });
});

test("a request of the wrong shape is a fault that names the field", async () => {
  expect(await quietHost().call("route.read", { routeId: 7 })).toMatchObject({
    ok: false,
    fault: { code: "bad-request", where: "route.read.routeId" },
  });
});

test("a route that is not open is a fault, whatever is asked of it", async () => {
  const host = quietHost();
  for (const method of ["route.read", "edit.undo", "edit.redo"]) {
    expect(await host.call(method, { routeId: "route-9" })).toMatchObject({
      ok: false,
      fault: { code: "no-such-route" },
    });
  }
});

test("a mistake of the program comes back as a fault and is reported with its stack", async () => {
  const reported: unknown[] = [];
  const broken = {
    "route.list": () => {
      throw new Error("a cable without an end");
    },
  } as unknown as Handlers; // the other methods are not called
  const call = serve(broken, (error) => reported.push(error));
  expect(await call("route.list", {})).toMatchObject({
    ok: false,
    fault: { code: "program-error", where: "route.list", mend: "Nothing was changed. Try again." },
  });
  expect(reported).toHaveLength(1);
});

test("every method of the contract has a request and a reply to check", () => {
  expect(Object.keys(contract).length).toBeGreaterThan(8);
  for (const { request, reply } of Object.values(contract)) {
    expect(request.safeParse(null).success).toBe(false);
    expect(reply.safeParse(null).success).toBe(false);
  }
});
