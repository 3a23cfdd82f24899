import {
  Anchor,
  Building2,
  CircleDot,
  GitBranch,
  House,
  type LucideIcon,
  RectangleEllipsis,
  Shovel,
  Slash,
  SquareSplitHorizontal,
  Tag,
} from "lucide-react";
import type { AddingTool } from "./addingState.ts";

type ToolEntry = {
  readonly tool: AddingTool;
  readonly actionId: string;
  readonly key: string;
  readonly icon: LucideIcon;
};

/** The tools that add by hand in the order a line is built. */
export const addingTools: readonly ToolEntry[] = [
  { tool: "pole", actionId: "addPole", key: "P", icon: CircleDot },
  { tool: "span", actionId: "addSpan", key: "S", icon: Slash },
  { tool: "lateral", actionId: "addLateral", key: "L", icon: GitBranch },
  { tool: "terminal", actionId: "hangTerminal", key: "T", icon: RectangleEllipsis },
  { tool: "crossing", actionId: "addCrossing", key: "C", icon: SquareSplitHorizontal },
  { tool: "structure", actionId: "addStructure", key: "B", icon: Building2 },
  { tool: "groundPoint", actionId: "addGroundPoint", key: "G", icon: Shovel },
  { tool: "guy", actionId: "addGuy", key: "Y", icon: Anchor },
  { tool: "attachment", actionId: "addAttachment", key: "A", icon: Tag },
  { tool: "unit", actionId: "addUnit", key: "U", icon: House },
];
