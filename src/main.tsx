/** The composition root: hands the browser's edges to the store and the store to the page. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { JobText } from './core/job/jobText';
import { failure, type Result } from './core/result';
import { demoJob } from './document/demoJob';
import { browserClock } from './platform/clock';
import { createLateDrafts } from './platform/lateDrafts';
import { createLateFiles } from './platform/lateFiles';
import { onLeaving } from './platform/leaving';
import { createPlanner } from './state/plannerStore';
import { App } from './ui/App';

/** The page shows before the drafts and the reader of jobs have come; the draft of the last visit waits for both. */
const drafts = createLateDrafts(async () => {
  const [{ createDrafts }, { readJob }] = await Promise.all([import('./platform/drafts'), jobReader()]);
  return createDrafts({
    readJob: (value) => {
      const read = readJob(value);
      return read.ok ? read.value : null;
    },
  });
});
const files = createLateFiles(() => import('./platform/files'));
const planner = createPlanner({ firstJob: demoJob, drafts, clock: browserClock });
onLeaving(planner.actions.hurryDraft);
void planner.actions.start().finally(files.fetchAhead);

/** Without its reader a draft counts as unreadable: it is left alone, and the page says so. */
function jobReader(): Promise<{ readJob: (value: unknown) => Result<JobText> }> {
  return import('./document/openJob').catch(() => ({ readJob: () => failure([]) }));
}

const root = document.getElementById('root');
if (root !== null) {
  createRoot(root).render(
    <StrictMode>
      <App planner={planner} files={files} />
    </StrictMode>,
  );
}
