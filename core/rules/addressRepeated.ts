import { type Rule, routeItself } from "./rule.ts";

export const addressRepeated: Rule = {
  id: "address-repeated",
  title: "Every living unit has an address of its own",
  compares: "How many living units have one and the same address, against one.",
  severity: "warning",
  basis: routeItself,
  each: "livingUnit",
  *check(plant, id) {
    const { address } = plant.rowOf("livingUnit", id);
    const same = plant.where("livingUnit", "address", address);
    if (same.length < 2 || same[0] !== id) return;
    yield {
      subjects: same.map((one) => ({ table: "livingUnit", id: one })),
      message: `More than one living unit has the address ${address}.`,
      measured: same.length,
      limit: 1,
      unit: "",
      fixes: [],
    };
  },
};
