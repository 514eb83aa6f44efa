/** Every layout that the survey allows: what the search keeps to, the picture, the place looked at, and why there may be none. */
import { useMemo, useState } from 'react';
import type { KeyChange } from '../../core/choose/changeStair';
import type { StringerTop } from '../../core/job/jobText';
import { regionOf, type Spot } from '../../core/search/region';
import { toMm } from '../../core/units/exact';
import '../../text/lateFindings';
import '../../text/lateSearch';
import { sayProblem } from '../../text/say';
import { useStair } from '../stairOnShow';
import { FoundList } from './FoundList';
import { LookedAt } from './LookedAt';
import { RegionPicture } from './RegionPicture';
import { type Studied, useStudy } from './useStudy';
import { useWishes } from './useWishes';
import { WhyNothing } from './WhyNothing';
import { WishFields } from './WishFields';
import './search.css';

interface SearchPartProps {
  readonly onTake: (changes: readonly KeyChange[]) => boolean;
}

export function SearchPart({ onTake }: SearchPartProps) {
  const { say, units } = useStair();
  const desk = useWishes();
  const { studied, isWorking, problems } = useStudy(desk.inUse);
  const result = studied?.study.result;
  return (
    <>
      <section className="sheet search" aria-labelledby="search-title" aria-busy={isWorking}>
        <h2 id="search-title">{say('search.title')}</h2>
        {result === undefined ? (
          <p>{say('search.working')}</p>
        ) : (
          <p aria-live="polite">{say('search.lead', { looked: result.looked, found: result.found.length })}</p>
        )}
        {problems.map((found) => (
          <p key={found.code}>{sayProblem(say, found, units)}</p>
        ))}
        <WishFields desk={desk} />
        {studied !== null && <Places studied={studied} onTake={onTake} />}
      </section>
      {studied !== null && studied.study.ranked.length > 0 && (
        <FoundList studied={studied} desk={desk} onTake={onTake} />
      )}
    </>
  );
}

interface PlacesProps extends SearchPartProps {
  readonly studied: Studied;
}

function Places({ studied, onTake }: PlacesProps) {
  const { say } = useStair();
  const { study, asked } = studied;
  const { frame } = study.result;
  const now = useMemo(() => spotOf(studied), [studied]);
  const nowTop = asked.search.job.stringer.top;
  const [top, setTop] = useState<StringerTop | null>(null);
  const [looked, setLooked] = useState<Spot | null>(null);
  const { tops } = asked.search.wishes;
  const shownTop = [top, nowTop].find((each) => each !== null && tops.includes(each)) ?? (tops[0] as StringerTop);
  const region = useMemo(() => regionOf(study, shownTop, now), [study, shownTop, now]);
  const spot = within(looked ?? now, region);
  const take = (changes: readonly KeyChange[]) => {
    if (!onTake(changes)) return;
    setTop(null);
    setLooked(null);
  };
  return (
    <>
      {study.why !== null && (
        <WhyNothing
          why={study.why}
          gridMm={frame.gridMm}
          onTake={take}
          onLook={(of, at) => {
            setTop(of);
            setLooked(at);
          }}
        />
      )}
      <h3>{say('search.region')}</h3>
      <p className="hint">{say('search.region.lead')}</p>
      <label className="search-top">
        <span>{say('search.region.top')}</span>
        <select
          value={shownTop}
          onChange={(event) => setTop(tops.find((each) => each === event.currentTarget.value) ?? null)}
        >
          {tops.map((each) => (
            <option key={each} value={each}>
              {say(`choice.stringer.top.${each}`)}
            </option>
          ))}
        </select>
      </label>
      <div className="search-places">
        <RegionPicture
          region={region}
          gridMm={frame.gridMm}
          now={shownTop === nowTop ? now : null}
          lookedAt={spot}
          onLook={setLooked}
        />
        <LookedAt studied={studied} region={region} spot={spot} onLook={setLooked} onTake={take} />
      </div>
    </>
  );
}

/** Where the stair in hand lies; without a run of its own it has the least that the rules allow. */
function spotOf({ asked: { search }, study }: Studied): Spot {
  const { job, limits } = search;
  const { frame } = study.result;
  const run = job.steps.run ?? limits.treadMin;
  const risers = job.steps.risers === 'auto' ? (study.ranked[0]?.found.risers ?? frame.fewest) : job.steps.risers;
  const steps = run === null ? frame.leastSteps : Math.round(toMm(run) / frame.gridMm);
  const between = (least: number, value: number, most: number) => Math.max(least, Math.min(most, value));
  return {
    risers: between(frame.fewest, risers, frame.most),
    steps: between(frame.leastSteps, steps, frame.mostSteps),
  };
}

function within({ risers, steps }: Spot, { rows, from, to }: ReturnType<typeof regionOf>): Spot {
  const [first, last] = [rows[0]?.risers ?? risers, rows.at(-1)?.risers ?? risers];
  return { risers: Math.max(first, Math.min(last, risers)), steps: Math.max(from, Math.min(to, steps)) };
}
