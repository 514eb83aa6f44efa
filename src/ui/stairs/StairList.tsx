/** Which stair of the job is on show, and the way to the list of all. */
import { lazy, Suspense, useState } from 'react';
import { useStair } from '../stairOnShow';

const StairsDialog = lazy(() => import('./StairsDialog').then(({ StairsDialog }) => ({ default: StairsDialog })));

export function StairList() {
  const { say, job, index } = useStair();
  const [isOpen, setOpen] = useState(false);
  const shown = job.stairs[index];
  return (
    <>
      <button type="button" className="stairs-open" onClick={() => setOpen(true)}>
        {say('stairs.open', { name: shown?.name ?? shown?.id ?? '' })}
      </button>
      {isOpen && (
        <Suspense fallback={null}>
          <StairsDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
