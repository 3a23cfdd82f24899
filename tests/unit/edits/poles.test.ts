import { expect, test } from "vitest";
import { granted, labelOf, refusal } from "../../fixtures/layout/asking.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

test("moving a pole gives its spans their new lengths and leaves the others", () => {
  const route = granted(smallRoute(), "pole.move", { poleId: "pole-2", eastM: 50, northM: 0 });
  expect([...route.span.values()].map((one) => one.lengthM)).toEqual([50, 40, 45]);
});

test("a terminal keeps its distance from its own pole when the span's length changes", () => {
  const far = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 44 });
  const route = granted(far, "pole.move", { poleId: "pole-3", eastM: 95, northM: 0 });
  expect(route.span.get("span-2")?.lengthM).toBe(50);
  expect(route.terminal.get("terminal-1")?.offsetM).toBeCloseTo(49, 9);
  expect(route.terminal.get("terminal-2")?.offsetM).toBe(0.9144);
  expect(route.crossing.get("crossing-1")?.offsetM).toBe(25);
});

test("a pole does not come so near that a terminal loses its place in the span", () => {
  const far = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 20 });
  expect(refusal(far, "pole.move", { poleId: "pole-3", eastM: 60, northM: 0 })).toMatchObject({ code: "no-room" });
});

test("an edit is named by the tag people know", () => {
  expect(labelOf(smallRoute(), "pole.move", { poleId: "pole-2", eastM: 50, northM: 0 })).toBe("Move pole P2");
  expect(labelOf(smallRoute(), "terminal.turn", { terminalId: "terminal-1" })).toBe(
    "Turn terminal T1 to the other side",
  );
});

test("a new span without a length is as long as its poles stand apart", () => {
  const input = {
    spanId: "span-9",
    fromPoleId: "pole-1",
    toPoleId: "pole-3",
    lengthM: null,
    strandSectionId: null,
    origin: "drawn",
    note: "",
  };
  expect(granted(smallRoute(), "span.add", input).span.get("span-9")?.lengthM).toBe(90);
  expect(refusal(smallRoute(), "span.add", { ...input, toPoleId: "pole-1" }).code).toBe("no-length");
});

test("confirming an inferred span makes it a surveyed one, and only an inferred one", () => {
  const inferred = changed(smallRoute(), "span", "span-1", { origin: "inferred" });
  expect(granted(inferred, "span.confirm", { spanId: "span-1" }).span.get("span-1")?.origin).toBe("surveyed");
  expect(refusal(smallRoute(), "span.confirm", { spanId: "span-1" }).code).toBe("not-inferred");
});

test("settings change one by one and only to what the catalogue has", () => {
  expect(granted(smallRoute(), "settings.set", { values: { standoffM: 1 } }).settings.get("settings")?.standoffM).toBe(
    1,
  );
  expect(refusal(smallRoute(), "settings.set", { values: { dropTypeId: "drop-none" } })).toMatchObject({
    code: "missing-row",
    where: "dropTypeId",
  });
});

test("an added row names only what is there and takes no id in use", () => {
  const { id, ...columns } = smallRoute().attachment.get("neutral-2") ?? { id: "" };
  expect(refusal(smallRoute(), "attachment.add", { ...columns, attachmentId: id }).code).toBe("taken-id");
  const astray = { ...columns, attachmentId: "new", poleId: "pole-99" };
  expect(refusal(smallRoute(), "attachment.add", astray)).toMatchObject({ code: "missing-row", where: "new, poleId" });
});
