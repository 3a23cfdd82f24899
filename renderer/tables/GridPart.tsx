import type { ComponentProps } from "react";

/**
 * A part of the grid by its role. Only the rows in sight are on the page and each is placed by hand, which table elements would not
 * let one do; the grid itself holds the focus and names the active cell.
 */
export function GridPart(props: ComponentProps<"div"> & { readonly role: string }) {
  return <div {...props} />;
}
