import { describe, expect, it } from "vitest";
import { openMemo } from "../../../core/plant/memo.ts";

/** Figures over two inputs: counts how often each is computed. */
function figures(values: Record<string, number>) {
  const memo = openMemo();
  const computed: string[] = [];
  const read = (name: string): number => {
    memo.touch("input", name);
    return values[name] ?? Number.NaN;
  };
  const ask = (name: string, compute: () => number, steady = false): number =>
    memo.get(
      "figure",
      name,
      () => {
        computed.push(name);
        return compute();
      },
      steady,
    );
  const stale = (...names: string[]): string[] =>
    memo.stale(names.map((name) => ["input", name] as const)).map(([, name]) => name);
  return { stale, computed, read, ask, values };
}

describe("the memo", () => {
  it("computes a figure once however often it is asked", () => {
    const { ask, read, computed } = figures({ span: 40 });
    const sag = () => ask("sag", () => read("span") / 100);
    expect([sag(), sag()]).toEqual([0.4, 0.4]);
    expect(computed).toEqual(["sag"]);
  });

  it("computes again what leaned on a changed input, and nothing else", () => {
    const { stale, ask, read, computed, values } = figures({ a: 1, b: 2 });
    const overA = () => ask("overA", () => read("a") + 1);
    const overB = () => ask("overB", () => read("b") + 1);
    const both = () => ask("both", () => overA() + overB());
    both();
    values.a = 10;
    expect(stale("a")).toEqual(["overA", "both"]);
    expect(both()).toBe(14);
    expect(computed).toEqual(["both", "overA", "overB", "both", "overA"]);
  });

  it("forgets what a figure read before, when it reads something else now", () => {
    const { stale, ask, read, values } = figures({ useB: 0, a: 1, b: 2 });
    const either = () => ask("either", () => (read("useB") ? read("b") : read("a")));
    either();
    values.useB = 1;
    stale("useB");
    either();
    expect(stale("a")).toEqual([]);
    expect(stale("b")).toEqual(["either"]);
  });

  it("leaves the readers of a steady figure alone when its value stays", () => {
    const { stale, ask, read, computed, values } = figures({ loss: 20 });
    const tooWeak = () => ask("tooWeak", () => (read("loss") > 28 ? 1 : 0), true);
    const finding = () => ask("finding", tooWeak);
    finding();
    values.loss = 21;
    expect(stale("loss")).toEqual([]);
    expect(finding()).toBe(0);
    expect(computed).toEqual(["finding", "tooWeak", "tooWeak"]);
  });

  it("drops the readers of a steady figure when its value is another one", () => {
    const { stale, ask, read, values } = figures({ loss: 20 });
    const tooWeak = () => ask("tooWeak", () => (read("loss") > 28 ? 1 : 0), true);
    const finding = () => ask("finding", tooWeak);
    finding();
    values.loss = 29;
    expect(stale("loss")).toEqual(["finding"]);
    expect(finding()).toBe(1);
  });

  it("follows a steady figure that leans on another steady one", () => {
    const { stale, ask, read, values } = figures({ a: 1 });
    const sign = () => ask("sign", () => Math.sign(read("a")), true);
    const twice = () => ask("twice", () => 2 * sign() + 0 * read("a"), true);
    const top = () => ask("top", twice);
    top();
    values.a = 5;
    expect(stale("a")).toEqual([]);
    values.a = -5;
    expect(stale("a")).toEqual(["top"]);
    expect(top()).toBe(-2);
  });

  it("drops the readers of a steady figure that can no longer be computed", () => {
    const { stale, ask, read, values } = figures({ terminal: 1 });
    const place = () =>
      ask(
        "place",
        () => {
          if (!read("terminal")) throw new Error("a reference leads nowhere");
          return 1;
        },
        true,
      );
    const drop = () => ask("drop", place);
    drop();
    values.terminal = 0;
    expect(stale("terminal")).toEqual(["drop"]);
    expect(drop).toThrow("a reference leads nowhere");
  });

  it("refuses a figure that leans on itself", () => {
    const { ask } = figures({});
    const loop = (): number => ask("loop", () => loop());
    expect(loop).toThrow("the figure figure loop leans on itself");
  });

  it("keeps nothing of a figure whose computation failed", () => {
    const { ask, read, values } = figures({ span: 0 });
    const sag = () =>
      ask("sag", () => {
        if (!(read("span") > 0)) throw new RangeError("no span");
        return 1;
      });
    expect(sag).toThrow("no span");
    values.span = 40;
    expect(sag()).toBe(1);
  });
});
