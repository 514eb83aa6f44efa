/** Every layout that the survey allows: what the search keeps to, the picture, the place looked at, and why there may be none. */
import { memo, useDeferredValue, useMemo, useState } from 'react';
import type { JobText, StringerTop } from '../../core/job/jobText';
import { layoutStair } from '../../core/layout/layoutStair';
import { regionOf, type Spot } from '../../core/search/region';
import { toMm } from '../../core/units/exact';
import '../../text/lateFindings';
import '../../text/lateSearch';
import { sayProblem } from '../../text/say';
import type { Takeable } from '../choose/useAlternatives';
import { useWords } from '../stairOnShow';
import { FoundList } from './FoundList';
import { LookedAt } from './LookedAt';
import { RegionPicture } from './RegionPicture';
import { type Studied, type StudyOnShow, useStudy } from './useStudy';
import { useWishes, type WishDesk } from './useWishes';
import { WhyNothing } from './WhyNothing';
import { WishFields } from './WishFields';
import './search.css';

interface SearchPartProps {
  readonly onTake: (changes: Takeable) => boolean;
}

export function SearchPart({ onTake }: SearchPartProps) {
  const desk = useWishes();
  return <Search {...{ desk, onTake, ...useStudy(desk.inUse) }} />;
}

interface SearchProps extends SearchPartProps, StudyOnShow {
  readonly desk: WishDesk;
}

const Search = memo(function Search({ desk, studied, isWorking, problems, onTake }: SearchProps) {
  const { say, units } = useWords();
  // How many there are is said first; the picture and the list are made in slices.
  const drawn = useDeferredValue(studied);
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
        {drawn !== null && <Places studied={drawn} onTake={onTake} />}
      </section>
      {drawn !== null && drawn.study.ranked.length > 0 && <FoundList studied={drawn} desk={desk} onTake={onTake} />}
    </>
  );
});

interface Look {
  readonly job: JobText;
  readonly top: StringerTop;
  readonly spot: Spot;
}

interface PlacesProps extends SearchPartProps {
  readonly studied: Studied;
}

const Places = memo(function Places({ studied, onTake }: PlacesProps) {
  const { say } = useWords();
  const { study, asked } = studied;
  const { frame } = study.result;
  const now = useMemo(() => spotOf(studied), [studied]);
  const nowTop = asked.search.job.stringer.top;
  // What is looked at counts for the stair as it was then: a changed one is looked at where it stands itself.
  const [look, setLook] = useState<Look | null>(null);
  const { top = null, spot: looked = now } = look?.job === asked.job ? look : {};
  const { tops } = asked.search.wishes;
  const shownTop = [top, nowTop].find((each) => each !== null && tops.includes(each)) ?? (tops[0] as StringerTop);
  const region = useMemo(() => regionOf(study, shownTop, now), [study, shownTop, now]);
  const spot = within(looked, region);
  const lookAt = (of: StringerTop, at: Spot) => setLook({ job: asked.job, top: of, spot: at });
  return (
    <>
      {study.why !== null && (
        <WhyNothing why={study.why} asked={asked} gridMm={frame.gridMm} onTake={onTake} onLook={lookAt} />
      )}
      <h3>{say('search.region')}</h3>
      <p className="hint">{say('search.region.lead')}</p>
      <label className="search-top">
        <span>{say('search.region.top')}</span>
        <select
          value={shownTop}
          onChange={(event) => lookAt(tops.find((each) => each === event.currentTarget.value) ?? shownTop, spot)}
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
          onLook={(at) => lookAt(shownTop, at)}
        />
        <LookedAt studied={studied} region={region} spot={spot} onLook={(at) => lookAt(shownTop, at)} onTake={onTake} />
      </div>
    </>
  );
});

/** Where the stair in hand lies, or would, if it cannot be laid out. */
function spotOf({ asked: { search }, study }: Studied): Spot {
  const { job, limits } = search;
  const { frame } = study.result;
  const layout = layoutStair(job, limits);
  const run = layout.ok ? layout.value.flight.exact.run : (job.steps.run ?? limits.treadMin);
  const risers = layout.ok ? layout.value.flight.risers : Number(job.steps.risers) || frame.fewest;
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
