import type { Rule } from "./rule.ts";
import { terminalStandoff } from "./terminalStandoff.ts";

/** Every rule of the program. A test fails where a file of this folder is missing here. */
export const ruleRegister: readonly Rule[] = [terminalStandoff];
