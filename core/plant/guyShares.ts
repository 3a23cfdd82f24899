/** Guys whose directions differ by no more than this share one pull, rad. */
const sameDirectionRad = Math.PI / 12;

/** A level pull on the route's grid, N. */
export type Pull = { readonly eastN: number; readonly northN: number };

/**
 * What each guy of a pole holds of a level pull, N: by equilibrium of two directions where the pull lies between them, the least
 * sum of all such pairs; else by the one direction that stands best against it, and the rest is held by nothing.
 *
 * @param directionsRad  from the pole to each anchor, counter-clockwise from east
 * @returns level load of each guy, N, 0 or more, in their order
 * @source equilibrium of level forces at a point; guys side by side are taken to share evenly
 */
export function guyShares(pull: Pull, directionsRad: readonly number[]): readonly number[] {
  const groups = sideBySide(directionsRad);
  const held = pairLoads(pull, groups) ?? singleLoad(pull, groups);
  return directionsRad.map((_, guy) => {
    const at = groups.findIndex((group) => group.guys.includes(guy));
    return (held[at] ?? 0) / (groups[at]?.guys.length ?? 1);
  });
}

/** Angle between a direction and the one straight against a pull, rad, 0 to pi. */
export function againstRad(pull: Pull, directionRad: number): number {
  const turn = directionRad - Math.atan2(-pull.northN, -pull.eastN);
  return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
}

type Group = { readonly directionRad: number; readonly guys: readonly number[] };

function sideBySide(directionsRad: readonly number[]): Group[] {
  const groups: Group[] = [];
  directionsRad.forEach((directionRad, guy) => {
    const at = groups.findIndex(
      (group) =>
        againstRad({ eastN: -Math.cos(group.directionRad), northN: -Math.sin(group.directionRad) }, directionRad) <=
        sameDirectionRad,
    );
    const group = groups[at];
    if (group) groups[at] = { ...group, guys: [...group.guys, guy] };
    else groups.push({ directionRad, guys: [guy] });
  });
  return groups;
}

function pairLoads({ eastN, northN }: Pull, groups: readonly Group[]): number[] | null {
  let best: number[] | null = null;
  let bestN = Infinity;
  groups.forEach((a, i) => {
    groups.slice(i + 1).forEach((b, k) => {
      const across = Math.sin(b.directionRad - a.directionRad);
      if (Math.abs(across) < 1e-9) return;
      const aN = (-eastN * Math.sin(b.directionRad) + northN * Math.cos(b.directionRad)) / across;
      const bN = (eastN * Math.sin(a.directionRad) - northN * Math.cos(a.directionRad)) / across;
      if (aN < 0 || bN < 0 || aN + bN >= bestN) return;
      bestN = aN + bN;
      best = groups.map((_, at) => (at === i ? aN : at === i + 1 + k ? bN : 0));
    });
  });
  return best;
}

function singleLoad(pull: Pull, groups: readonly Group[]): number[] {
  const loads = groups.map(
    ({ directionRad }) => Math.hypot(pull.eastN, pull.northN) * Math.cos(againstRad(pull, directionRad)),
  );
  const most = Math.max(0, ...loads);
  return loads.map((load) => (load > 0 && load === most ? load : 0));
}
