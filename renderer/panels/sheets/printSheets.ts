import type { Session } from "../../app/session.ts";
import { readSheets } from "../../app/sheetJobs.ts";
import type { PreviewSheet } from "../../app/viewStore.ts";

/**
 * Hands sheets to the system's print dialog, each a page of its own at true size. Ends when the dialog is closed.
 *
 * What is printed is what the preview shows: the same pictures, in the same fonts.
 */
export async function printSheets(session: Session, sheets: readonly PreviewSheet[]): Promise<void> {
  const [first] = sheets;
  if (!first) return;
  const room = document.createElement("div");
  room.className = "print-room";
  const isRead = await readSheets(
    session,
    sheets.map((one) => one.number),
    (svg) => {
      // parsed as a picture, so that nothing in it can run
      const { documentElement } = new DOMParser().parseFromString(svg, "image/svg+xml");
      room.append(document.importNode(documentElement, true));
    },
  );
  if (!isRead) return;
  const { width, height } = first.sizeMm;
  const page = new CSSStyleSheet();
  page.replaceSync(`@page { size: ${width}mm ${height}mm; margin: 0 }`);
  document.adoptedStyleSheets.push(page);
  document.body.append(room);
  await document.fonts.ready;
  const over = new Promise((resolve) => window.addEventListener("afterprint", resolve, { once: true }));
  window.print();
  await over;
  room.remove();
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== page);
}
