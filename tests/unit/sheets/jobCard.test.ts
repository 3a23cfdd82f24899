import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { terminalFacts } from "../../../core/sheets/jobCard/terminalFacts.ts";
import { terminalSteps } from "../../../core/sheets/jobCard/terminalSteps.ts";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";

const textsOf = (route: Route) =>
  composeSet(openPlant(route), [], { kinds: ["terminal"] }).sheets.flatMap((one) =>
    one.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

describe("a job card", () => {
  it("sends the crew to the station of the pole, not to that of the terminal", () => {
    const facts = terminalFacts(openPlant(smallRoute()), "terminal-1");
    expect(facts.place.stationM).not.toBe(facts.poleStationM);
    const moved = changed(smallRoute(), "terminal", "terminal-1", { offsetM: facts.place.fromPoleM + 3 });
    const stepOf = (route: Route) => terminalSteps(terminalFacts(openPlant(route), "terminal-1"))[0]?.text;
    expect(stepOf(moved)).toBe(stepOf(smallRoute()));
  });

  it("asks for no splice where no fiber is given to the terminal", () => {
    const bare = [...smallRoute().fiberUse.keys()].reduce((route, id) => without(route, "fiberUse", id), smallRoute());
    expect(textsOf(smallRoute())).toContain("Spliced to");
    expect(textsOf(bare)).toContain("No fiber feeds this terminal yet");
    expect(textsOf(bare)).not.toContain("Spliced to");
  });
});
