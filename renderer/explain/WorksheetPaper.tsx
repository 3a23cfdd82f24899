import { useEffect, useRef } from "react";
import type { FigureRef } from "../../core/explain/explanation.ts";
import { logoRefOf } from "../../core/model/logoRef.ts";
import { writeSvg } from "../../core/sheets/paper/writeSvg.ts";
import { composeWorksheets } from "../../core/sheets/worksheets.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useLogo } from "../app/useLogo.ts";

/** A worksheet's pages as they go to the printer: the same that the command line draws. Not seen on the screen. */
export function WorksheetPaper({ open, figure }: { readonly open: OpenRoute; readonly figure: FigureRef }) {
  const { plant, routeId } = open;
  const { logo } = plant.settings();
  const href = useLogo(routeId, logo);
  const pages = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const ref = logoRefOf(logo);
    const { sheets, layerNames } = composeWorksheets(plant, [figure], ref && href ? { ...ref, href } : null);
    const pictures = sheets.map((sheet) => {
      // parsed as a picture, so that nothing in it can run
      const { documentElement } = new DOMParser().parseFromString(writeSvg(sheet, layerNames), "image/svg+xml");
      return document.importNode(documentElement, true);
    });
    pages.current?.replaceChildren(...pictures);
  }, [plant, figure, logo, href]);
  return <div ref={pages} className="worksheet-paper" aria-hidden="true" />;
}
