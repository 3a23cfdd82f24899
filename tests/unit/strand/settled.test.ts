import { expect, it } from "vitest";
import { type Result, refused } from "../../../core/model/result.ts";
import { type Settled, tensionNotSettled } from "../../../core/strand/settled.ts";

it("a search that did not settle is refused as any other request is", () => {
  const settled: Settled<number> = tensionNotSettled(7);
  const result: Result<number> = settled;
  expect(result).toEqual(settled.ok ? null : refused(settled.fault));
  expect(result).toMatchObject({ fault: { what: "The tension did not settle in 7 steps." } });
});
