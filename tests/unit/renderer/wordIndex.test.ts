import { expect, test } from "vitest";
import { slips } from "../../../renderer/finder/slips.ts";
import { openWordIndex } from "../../../renderer/finder/wordIndex.ts";

function addresses(count: number) {
  const index = openWordIndex();
  const streets = ["Marrow Lane", "Bend Road", "Orchard Street", "Cottonwood Avenue", "Sycamore Court"];
  for (let number = 1; number <= count; number += 1) {
    index.put(`unit-${number}`, `${number} ${streets[number % streets.length]}`);
    index.put(`pole-${number}`, `Pole P-${number}`);
    for (let port = 1; port <= 4; port += 1) index.put(`port-${number}-${port}`, `Terminal T-${number} port ${port}`);
  }
  return index;
}

test("a part of an address finds it, words in any order", () => {
  expect(addresses(20).find("cottonw 8")[0]?.key).toBe("unit-8");
});

test("a slip of the hand is forgiven: a letter missing, added, exchanged or turned", () => {
  const index = addresses(20);
  for (const typed of ["8 cotonwood", "8 cottonwoood", "8 cottonwoad", "8 cottnowood"]) {
    expect(index.find(typed)[0]?.key).toBe("unit-8");
  }
});

test("a short word may lack a letter too, but a whole word comes before one with a slip", () => {
  const index = openWordIndex();
  index.put("road", "12 Oak Road");
  index.put("rod", "Lightning rod");
  expect(index.find("12 oak rod").map((one) => one.key)).toEqual(["road"]);
  expect(index.find("rod").map((one) => one.key)).toEqual(["rod", "road"]);
});

test("a pole's tag is found with and without its hyphen, before longer tags", () => {
  const index = addresses(200);
  expect(index.find("P-12")[0]?.key).toBe("pole-12");
  expect(index.find("p12")[0]?.key).toBe("pole-12");
});

test("a text put anew is found by its new words only", () => {
  const index = addresses(3);
  index.put("pole-1", "Pole K-77");
  expect(index.find("K-77")[0]?.key).toBe("pole-1");
  expect(index.find("P-1").some((one) => one.key === "pole-1")).toBe(false);
  index.drop("pole-1");
  expect(index.find("K-77")).toEqual([]);
});

test("two letters turned about are one slip, and other words are none of it", () => {
  expect(slips("tremi", "termi", 2)).toBe(1);
  expect(slips("pole", "span", 1)).toBeNull();
});

test("an answer over 2,000 poles with their units and ports comes well under 100 ms", () => {
  const index = addresses(2000);
  // processor time, the least of five: a busy machine does not make the answer dearer
  const costsMs = [1, 2, 3, 4, 5].map(() => {
    const before = process.cpuUsage();
    expect(index.find("1233 cotonwood")[0]?.key).toBe("unit-1233");
    return process.cpuUsage(before).user / 1000;
  });
  expect(Math.min(...costsMs)).toBeLessThan(100);
});
