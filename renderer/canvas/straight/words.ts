/** Words of the station ruler. */
export const words = {
  ruler: (row: string) => (row === "" ? "Stations along the route" : `Stations along ${row}`),
  along: (row: string) => (row === "" ? "Along the route" : `Along ${row}`),
  pole: (tag: string, station: string) => `Pole ${tag}, station ${station}`,
  go: "Station or pole",
  goHelp: "Type a station such as 12+34, or a pole's tag, and press Enter.",
  nowhere: (text: string) => `There is no station or pole "${text}" on this line.`,
} as const;
