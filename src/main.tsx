/** The composition root: hands the browser's edges to the store and the store to the page. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { demoJob } from './document/demoJob';
import { readJob } from './document/openJob';
import { browserClock } from './platform/clock';
import { createDrafts } from './platform/drafts';
import { fileFromDrop, pickFile, saveFile } from './platform/files';
import { onLeaving } from './platform/leaving';
import { createPlanner } from './state/plannerStore';
import { App } from './ui/App';

const drafts = createDrafts({
  readJob: (value) => {
    const read = readJob(value);
    return read.ok ? read.value : null;
  },
});
const files = { pickFile, saveFile, fileFromDrop };
const planner = createPlanner({ firstJob: demoJob, drafts, clock: browserClock });
onLeaving(planner.actions.hurryDraft);
void planner.actions.start();

const root = document.getElementById('root');
if (root !== null) {
  createRoot(root).render(
    <StrictMode>
      <App planner={planner} files={files} />
    </StrictMode>,
  );
}
