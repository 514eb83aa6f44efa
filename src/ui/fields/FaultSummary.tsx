/** Every field whose text is not in use, with a way there; nothing while there is none. */
import { useDeferredValue, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { useStair } from '../stairOnShow';
import { useGoToPlace } from '../steps/goToPlace';
import { useBench } from '../usePlanner';
import { idOf, labelOf, sentencesOf } from './fieldWords';
import { stairOfPlace } from './jobPlaces';

/** Milliseconds: half a number, "7 1/", is a fault until the next key, and not worth moving the page for. */
const PAUSE = 600;

export function FaultSummary() {
  const { typing } = useBench();
  const { say, job, index } = useStair();
  const goTo = useGoToPlace();
  const typed = useSyncExternalStore(typing.subscribe, typing.all);
  // It follows the job, and would judge each key against the job before it.
  const entries = useDeferredValue(typed);
  const faults = useMemo(
    () =>
      [...entries].flatMap(([place, entry]) => {
        const stair = stairOfPlace(place);
        if (stair !== null && stair !== index) return [];
        const verdict = entry.judge(job, place);
        return verdict.kind === 'refused' ? [{ place, sentences: sentencesOf(say, verdict.problems, place, job) }] : [];
      }),
    [entries, index, job, say],
  );
  const [listed, setListed] = useState<ReadonlySet<string>>(new Set());
  useEffect(() => {
    const timer = setTimeout(() => setListed(new Set(faults.map(({ place }) => place))), PAUSE);
    return () => clearTimeout(timer);
  }, [faults]);
  const shown = faults.filter(({ place }) => listed.has(place));
  if (shown.length === 0) return null;
  return (
    <section className="fault-summary" aria-labelledby="fault-summary-title">
      <h2 id="fault-summary-title">{say('fault.summary', { count: shown.length })}</h2>
      <p>{say('fault.summaryLead')}</p>
      <ul>
        {shown.map(({ place, sentences }) => (
          <li key={place}>
            <a
              href={`#${idOf(place)}`}
              onClick={(event) => {
                event.preventDefault();
                goTo(place);
              }}
            >
              {labelOf(say, place)}
            </a>
            : {sentences.join(' ')}
          </li>
        ))}
      </ul>
    </section>
  );
}
