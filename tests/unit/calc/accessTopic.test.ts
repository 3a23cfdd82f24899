import { expect, it } from "vitest";
import { accessTopic } from "../../../core/calc/accessTopic.ts";

const asked = { receivedIso: "2026-03-02", poleCount: 48, ownerPoleCount: 120_000 };

it("an application of 48 poles is simple and is answered within 45 days of being complete", () => {
  expect(accessTopic.run(asked)).toMatchObject({
    value: {
      order: "simple",
      steps: [{ byIso: "2026-03-16", counted: "business" }, { byIso: "2026-04-30" }, {}, {}, {}, { mark: "memory" }],
    },
  });
});

it("an application sent in again is complete five business days later", () => {
  expect(accessTopic.run({ ...asked, resubmittedIso: "2026-03-20" })).toMatchObject({
    value: { steps: [{}, { byIso: "2026-03-27" }, { byIso: "2026-05-11" }, {}, {}, {}, {}] },
  });
});

it("a day that is none is refused", () => {
  expect(accessTopic.run({ ...asked, receivedIso: "2026-02-30" })).toMatchObject({ ok: false });
});
