import { basename } from "node:path";
import type { Request } from "../../core/contract/contract.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { bundled } from "./bundled.ts";
import { drawnState, type SetWanted } from "./drawnState.ts";
import type { Progress, RunJob } from "./jobs.ts";
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
}: Parts): Pick<Handlers, "draw.sheets" | "draw.pdf" | "draw.pictures"> {
  /** Draws what is asked for of a route, in a job of its own. */
  const draw = <T>(
    { routeId, jobId, revisionId, sheets, paper }: Request<"draw.pdf">,
    mostBytes: number,
    work: (wanted: SetWanted, name: string, onProgress: OnProgress, signal: AbortSignal) => Promise<T>,
  ): Promise<Result<T>> =>
    withRoute(routeId, (session) =>
      asJob(jobId, async (signal, onProgress): Promise<Result<T>> => {
        const state = drawnState(session, revisionId ?? null);
        if (!state.ok) return state;
        const asked = { ...state.value, only: sheets ?? null, paper: paper ?? null };
        const wanted = withPhotos(session.file.db, asked, mostBytes);
        return ok(await work(wanted, basename(session.fileName, ".strand"), onProgress, signal));
      }),
    );
  return {
    "draw.sheets": (request) =>
      draw(request, mostPhotoBytes.preview, (wanted, _name, onProgress, signal) =>
        runJob("svg", wanted, onProgress, signal),
      ),
    "draw.pdf": (request) =>
      draw(request, mostPhotoBytes.file, async (wanted, name, onProgress, signal) => {
        const { pdf } = await runJob("pdf", wanted, onProgress, signal);
        return { fileName: `${name}.pdf`, pdfBase64: Buffer.from(pdf).toString("base64") };
      }),
    "draw.pictures": (request) =>
      draw(request, mostPhotoBytes.file, async (wanted, name, onProgress, signal) => {
        const files = await runJob("files", { ...wanted, format: "png" }, onProgress, signal);
        const { fileName, content } = bundled(name, files);
        return { fileName, contentBase64: Buffer.from(content).toString("base64") };
      }),
  };
}
