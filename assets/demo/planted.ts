/** Poles and spans where the demo route is wrong on purpose, so that every check has something true to say. */
export const planted = {
  /** The secondary hangs 26 in above our strand where 40 in are asked. */
  lowPower: { pole: "M-17", aboveStrandFt: 2.2 },
  /** The telephone cable hangs 8 in from our strand where 12 in are asked. */
  closeTelephone: { pole: "M-22", aboveStrandFt: 0.7 },
  /** Clear at 60 degF, 2 to 4 in short on the hottest day by the cable, over a foot under ice. */
  lowDriveway: { from: "M-05", to: "M-06", hotShortFt: 0.35 },
  /** Clear at 60 degF, about 2 in short on the hottest day, 8 in under ice. */
  lowRail: { from: "M-24", to: "M-25", hotShortFt: 0.17 },
  /** A stub pole stands 10 ft from its neighbour: no terminal fits between. */
  shortSpan: { from: "M-12", to: "M-13", lengthFt: 10 },
  /** Stands 430 ft behind the line, where a drop reaches 300 ft. */
  farHouse: { nearPole: "M-27", setbackFt: 430 },
  /** Nobody levelled the driveway nor the pole beside it. */
  unlevelled: { from: "A-06", to: "A-07" },
  /** The strand ends here and nobody set a guy; every other dead end and turn has one. */
  unguyed: { pole: "A-11" },
  /** A sign stands 2 ft beside the line where 3 ft are asked, and the line passes too low over it. */
  nearSign: { from: "M-07", to: "M-08", besideFt: 2, heightFt: 15 },
  /** The telephone cable was measured with 5 in of sag where ours hangs with over a foot. */
  tautTelephone: { from: "M-15", to: "M-16", sagFt: 5 / 12 },
} as const;
