import { basename } from "node:path";
import type { Request } from "../../core/contract/contract.ts";
import { ok, type Result } from "../../core/model/result.ts";
import type { Progress } from "./drawingProgress.ts";
import { openDrawnSheets } from "./drawnSheets.ts";
import { drawnState, type SetWanted } from "./drawnState.ts";
import type { RunJob } from "./jobs.ts";
import { mostPhotoBytes, withPhotos } from "./keptPhotos.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";

type OnProgress = (progress: Progress) => void;

type Parts = {
  readonly runJob: RunJob;
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
  readonly asJob: <T>(
    jobId: string,
    work: (signal: AbortSignal, onProgress: OnProgress) => Promise<T>,
  ) => Promise<T | Result<never>>;
};

/** Answers with sheets of the drawing set: as the preview shows them, as a PDF, as pictures. */
export function drawHandlers({
  runJob,
  withRoute,
  asJob,
}: Parts): Pick<Handlers, "draw.sheets" | "draw.sheet" | "draw.pdf" | "draw.pictures"> {
  const drawnSheets = openDrawnSheets();
  /** Draws what is asked for of a route, in a job of its own. */
  const draw = <T>(
    { routeId, jobId, revisionId, sheets, paper }: Request<"draw.pdf">,
    mostBytes: number,
    work: (wanted: SetWanted, session: Session, onProgress: OnProgress, signal: AbortSignal) => Promise<T>,
  ): Promise<Result<T>> =>
    withRoute(routeId, (session) =>
      asJob(jobId, async (signal, onProgress): Promise<Result<T>> => {
        const state = drawnState(session, revisionId ?? null);
        if (!state.ok) return state;
        const asked = { ...state.value, only: sheets ?? null, paper: paper ?? null };
        const wanted = withPhotos(session.file.db, asked, mostBytes);
        return ok(await work(wanted, session, onProgress, signal));
      }),
    );
  return {
    "draw.sheets": (request) =>
      draw(request, mostPhotoBytes.preview, async (wanted, session, onProgress, signal) =>
        drawnSheets.keep(session, request.jobId, await runJob("svg", wanted, onProgress, signal)),
      ),
    "draw.sheet": ({ routeId, drawnId, number }) =>
      withRoute(routeId, (session) => drawnSheets.read(session, drawnId, number)),
    "draw.pdf": (request) =>
      draw(request, mostPhotoBytes.file, async (wanted, session, onProgress, signal) => {
        const { pdf } = await runJob("pdf", wanted, onProgress, signal);
        return { fileName: `${nameOf(session)}.pdf`, pdfBase64: base64(pdf) };
      }),
    "draw.pictures": (request) =>
      draw(request, mostPhotoBytes.file, async (wanted, session, onProgress, signal) => {
        const { fileName, content } = await runJob(
          "pictures",
          { ...wanted, name: nameOf(session) },
          onProgress,
          signal,
        );
        return { fileName, contentBase64: base64(content) };
      }),
  };
}

function nameOf(session: Session): string {
  return basename(session.fileName, ".strand");
}

function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString("base64");
}
