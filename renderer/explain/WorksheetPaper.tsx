import { useEffect, useRef } from "react";
import type { FigureRef } from "../../core/explain/explanation.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { composeWorksheets } from "../../core/sheets/worksheets.ts";
import { writeSvg } from "../../core/sheets/writeSvg.ts";

/** A worksheet's pages as they go to the printer: the same that the command line draws. Not seen on the screen. */
export function WorksheetPaper({ plant, figure }: { readonly plant: Plant; readonly figure: FigureRef }) {
  const pages = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const pictures = composeWorksheets(plant, [figure]).sheets.map((sheet) => {
      // parsed as a picture, so that nothing in it can run
      const { documentElement } = new DOMParser().parseFromString(writeSvg(sheet), "image/svg+xml");
      return document.importNode(documentElement, true);
    });
    pages.current?.replaceChildren(...pictures);
  }, [plant, figure]);
  return <div ref={pages} className="worksheet-paper" aria-hidden="true" />;
}
