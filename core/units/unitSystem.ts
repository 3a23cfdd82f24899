/** The units a person reads and writes: US customary, or metric. Inside the program everything is SI. */
export type UnitSystem = "us" | "metric";
