/** The composition root: hands the browser's edges to the store and the store to the page. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { JobText } from './core/job/jobText';
import { failure, type Result } from './core/result';
import { demoJob } from './document/demoJob';
import { browserClock } from './platform/clock';
import { createDrafts } from './platform/drafts';
import { fileFromDrop, pickFile, saveFile } from './platform/files';
import { onLeaving } from './platform/leaving';
import { createPlanner } from './state/plannerStore';
import { App } from './ui/App';

let readJob: (value: unknown) => Result<JobText> = () => failure([]);
const drafts = createDrafts({
  readJob: (value) => {
    const read = readJob(value);
    return read.ok ? read.value : null;
  },
});
const files = { pickFile, saveFile, fileFromDrop };
const planner = createPlanner({ firstJob: demoJob, drafts, clock: browserClock });
onLeaving(planner.actions.hurryDraft);
void begin();

/** The page shows before the reader of files has come; the draft of the last visit waits for it. */
async function begin(): Promise<void> {
  try {
    ({ readJob } = await import('./document/openJob'));
  } finally {
    // Without its reader a draft counts as unreadable: it is left alone, and the page says so.
    await planner.actions.start();
  }
}

const root = document.getElementById('root');
if (root !== null) {
  createRoot(root).render(
    <StrictMode>
      <App planner={planner} files={files} />
    </StrictMode>,
  );
}
