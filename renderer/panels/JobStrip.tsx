import { useEffect, useState } from "react";
import { cancelJob } from "../app/followJob.ts";
import { useSession, useView } from "../app/useSession.ts";
import { panelWords } from "./words.ts";

const patienceMs = 400;

/** Long work: how far it is, and a way to stop it. Shown once it has taken longer than a person waits. */
export function JobStrip() {
  const session = useSession();
  const job = useView((state) => state.job);
  const jobId = job?.jobId;
  const [slowId, setSlowId] = useState<string | null>(null);
  useEffect(() => {
    if (jobId === undefined) return;
    const timer = setTimeout(() => setSlowId(jobId), patienceMs);
    return () => clearTimeout(timer);
  }, [jobId]);
  if (!job || slowId !== job.jobId) return null;
  const how = job.isCancelling ? panelWords.stopping : job.words || panelWords.underWay;
  return (
    <div className="job">
      <span>{panelWords.work(job.name, how)}</span>
      <progress
        aria-label={job.name}
        max={job.totalCount > 0 ? job.totalCount : undefined}
        value={job.totalCount > 0 ? job.doneCount : undefined}
      />
      <button type="button" className="fix" disabled={job.isCancelling} onClick={() => void cancelJob(session)}>
        {job.stop}
      </button>
    </div>
  );
}
