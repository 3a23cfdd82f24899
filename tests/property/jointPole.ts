import fc from "fast-check";
import type { HeightRule } from "../../core/jointpole/barred.ts";
import type { Route } from "../../core/model/route.ts";
import type { TableName } from "../../core/model/tables.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { ruleRegister } from "../../core/rules/register.ts";
import type { Hit } from "../../core/rules/rule.ts";
import { changed, smallRoute, withRows } from "../fixtures/route/buildRoute.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const sign = {
  id: "sign",
  spanId: "span-2",
  name: "Sign",
  kind: "litSign" as const,
  lengthM: 3,
  besideM: 0,
  side: "left" as const,
};
const light = { id: "light", poleId: "pole-2", owner: "City", kind: "streetLight" as const, voltageV: 120, note: "" };

/** A joint pole, P2 of the small route, between two spans over uneven ground, with what may crowd it from above and below. */
export const jointPole: fc.Arbitrary<Route> = fc
  .record({
    lengthsM: fc.tuple(between(20, 70), between(20, 70)),
    groundsM: fc.tuple(between(99.3, 100.7), between(99.3, 100.7), between(99.3, 100.7)),
    midGroundM: between(98, 101.5),
    ourFarM: fc.tuple(between(6, 6.8), between(6, 6.8)),
    neutralM: fc.tuple(between(7.9, 9.2), between(7.6, 9.2), between(7.9, 9.2)),
    /** A supply wire of a voltage over what the limits cover, in the neutral's place. */
    isSupply: fc.boolean(),
    telephoneM: between(4.6, 7.6),
    telephoneRiseM: fc.tuple(between(-0.4, 0.4), between(-0.4, 0.4)),
    telephoneSagM: between(0.05, 0.9),
    crossing: fc.record({ offsetM: between(0, 70), widthM: between(2, 25), surfaceM: fc.option(between(98, 101.5)) }),
    structure: fc.record({ offsetM: between(0, 70), besideM: fc.constantFrom(0, 0.5, 3), heightM: between(1, 5) }),
    /** A sign over or under the line. */
    sign: fc.record({ offsetM: between(0, 70), bottomM: between(5, 8.5), thickM: between(0.3, 1.5) }),
    light: fc.option(
      fc.record({ heightM: between(4, 9), bonded: fc.boolean(), loopUnderM: fc.option(between(0.1, 0.6)) }),
    ),
    dropCrossing: fc.record({ fromUnitM: between(0, 35), widthM: between(1, 10), surfaceM: between(98, 101.8) }),
    aboveGroundM: fc.option(between(8, 12)),
    usableFromM: between(0, 5.6),
    otherWireSagFrac: between(0.005, 0.03),
  })
  .map((drawn) => {
    let route = ["limit-supplyAtPole", "limit-supplyInSpan"].reduce(
      (one, id) => changed(one, "clearanceLimit", id, { moreMPerV: 0.00001016 }),
      smallRoute({ settings: { usableFromM: drawn.usableFromM, otherWireSagFrac: drawn.otherWireSagFrac } }),
    );
    for (const [index, groundM] of drawn.groundsM.entries())
      route = changed(route, "pole", `pole-${index + 1}`, { groundM });
    route = changed(route, "pole", "pole-2", { aboveGroundM: drawn.aboveGroundM });
    for (const [index, lengthM] of drawn.lengthsM.entries())
      route = changed(route, "span", `span-${index + 1}`, { lengthM });
    route = changed(route, "attachment", "strand-1", { heightM: drawn.ourFarM[0] });
    route = changed(route, "attachment", "strand-3", { heightM: drawn.ourFarM[1] });
    for (const index of [0, 1, 2]) {
      route = changed(route, "attachment", `neutral-${index + 1}`, {
        heightM: drawn.neutralM[index] ?? 8,
        ...(drawn.isSupply ? { kind: "secondary", voltageV: 14_400 } : {}),
      });
      route = changed(route, "attachment", `telephone-${index + 1}`, {
        heightM: drawn.telephoneM + (index === 1 ? 0 : drawn.telephoneRiseM[index === 0 ? 0 : 1]),
      });
    }
    route = changed(route, "crossing", "crossing-1", drawn.crossing);
    route = changed(route, "livingUnit", "unit-1", { groundM: 100 });
    route = withRows(route, "groundPoint", [
      { id: "ground-1", spanId: "span-2", offsetM: 9, groundM: drawn.midGroundM },
    ]);
    route = withRows(route, "wireSag", [
      { id: "sag-1", spanId: "span-2", owner: "Telephone", kind: "communication", sagM: drawn.telephoneSagM },
    ]);
    route = withRows(route, "structure", [
      {
        id: "barn",
        spanId: "span-1",
        name: "Barn",
        kind: "building",
        lengthM: 8,
        side: "left",
        bottomM: null,
        ...drawn.structure,
      },
      {
        ...sign,
        offsetM: drawn.sign.offsetM,
        bottomM: drawn.sign.bottomM,
        heightM: drawn.sign.bottomM + drawn.sign.thickM,
      },
    ]);
    if (drawn.light) {
      const { loopUnderM, heightM, bonded } = drawn.light;
      const loop = { ...light, id: "loop", kind: "dripLoop" as const, bonded: false };
      const loops = loopUnderM === null ? [] : [{ ...loop, heightM: heightM - loopUnderM }];
      route = withRows(route, "attachment", [{ ...light, heightM, bonded }, ...loops]);
    }
    route = changed(route, "clearanceLimit", "limit-dropRoad", { edgeLimitM: 4, edgeRunM: 3 });
    return withRows(route, "dropCrossing", [
      { id: "lane", livingUnitId: "unit-1", name: "Lane", surface: "road", ...drawn.dropCrossing },
    ]);
  });

const heightRules: ReadonlySet<string> = new Set<HeightRule>([
  "crossing-clearance",
  "ground-clearance",
  "structure-clearance",
  "drop-clearance",
  "supply-separation-at-pole",
  "supply-separation-in-span",
  "communication-separation-at-pole",
  "communication-separation-in-span",
  "street-light-separation",
  "outside-usable-space",
]);

/** Every row whose findings hang on the height of our strand at P2. */
const rowsAtPole: Readonly<Partial<Record<TableName, readonly string[]>>> = {
  span: ["span-1", "span-2"],
  crossing: ["crossing-1"],
  structure: ["barn", "sign"],
  drop: ["drop-1", "drop-2"],
  attachment: ["strand-2", "neutral-2", "primary-2", "telephone-2", "light", "loop"],
};

/** What the real rules say at P2 while our strand is attached at a height. */
export function foundAt(route: Route, heightM: number): readonly (Hit & { readonly ruleId: string })[] {
  const plant = openPlant(changed(route, "attachment", "strand-2", { heightM }));
  return ruleRegister
    .filter(({ id }) => heightRules.has(id))
    .flatMap(({ id: ruleId, each, check }) =>
      (rowsAtPole[each] ?? [])
        .filter((id) => plant.row(each, id) !== undefined)
        .filter((id) => ruleId !== "outside-usable-space" || id === "strand-2")
        .flatMap((id) => [...check(plant, id)].map((hit) => ({ ...hit, ruleId }))),
    );
}
