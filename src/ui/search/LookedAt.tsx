/** One place of the picture: what closes it, or that it fits; a step either way; and the taking of it. */
import '../../text/lateFindings';
import { useMemo } from 'react';
import { changeStair } from '../../core/choose/changeStair';
import { figureOf } from '../../core/drawing/figures';
import { planStair } from '../../core/plan/planStair';
import { type Candidate, changesFor } from '../../core/search/candidate';
import { changesNow } from '../../core/search/planFound';
import type { Region, Spot } from '../../core/search/region';
import { BOOK } from '../../packs/ruleBook';
import { actualWords, limitWords, ruleWords } from '../../text/findingText';
import { sayProblem } from '../../text/say';
import type { Takeable } from '../choose/useAlternatives';
import { AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { decimalOf, lengthText } from '../numbers/figures';
import { TAPE_DOUBT, useWords } from '../stairOnShow';
import { StepSlider } from './StepSlider';
import { boardText } from './searchWords';
import type { Studied } from './useStudy';

interface LookedAtProps {
  readonly studied: Studied;
  readonly region: Region;
  readonly spot: Spot;
  readonly onLook: (spot: Spot) => void;
  readonly onTake: (changes: Takeable) => void;
}

export function LookedAt({ studied, region, spot, onLook, onTake }: LookedAtProps) {
  const { say, units } = useWords();
  const { gridMm } = studied.study.result.frame;
  const look = useMemo(() => lookAt(studied, region, spot), [studied, region, spot]);
  const run = spot.steps * gridMm;
  const pair = { risers: spot.risers, run: lengthText(run, units) };
  const answer =
    look.closed === null ? 'search.look.none' : look.closed.length > 0 ? 'search.look.closed' : 'search.look.fits';
  const spoken = say('search.look.spoken', { ...pair, answer: say(answer) });
  const last = region.rows.at(-1)?.risers ?? spot.risers;
  return (
    <div className="search-look">
      <h3 aria-label={say('choose.pair.spoken', pair)}>
        {say('search.look.pair', { risers: spot.risers, run: pair.run.replaceAll(' ', '\u00a0') })}
      </h3>
      <p className="unseen" aria-live="polite">
        {spoken}
      </p>
      <div className="search-look-keys">
        <StepSlider
          name={say('search.look.risers')}
          names={[say('search.look.fewer'), say('search.look.one')]}
          range={[region.rows[0]?.risers ?? spot.risers, last]}
          value={spot.risers}
          spoken={spoken}
          onChange={(risers) => onLook({ ...spot, risers })}
        />
        <StepSlider
          name={say('search.look.run')}
          names={[
            say('search.look.less', { step: units === 'metric' ? '1 mm' : '1/16 in' }),
            say('search.look.more', { step: units === 'metric' ? '1 mm' : '1/16 in' }),
          ]}
          range={[region.from, region.to]}
          value={spot.steps}
          spoken={spoken}
          onChange={(steps) => onLook({ ...spot, steps })}
        />
      </div>
      <LookWords look={look} />
      <button
        type="button"
        className="search-take"
        disabled={!look.plan.ok || look.keys.length === 0}
        aria-label={say(look.keys.length === 0 ? 'choose.inHand.spoken' : 'choose.take.spoken', pair)}
        onClick={() => onTake((present, index) => changesNow(present, index, studied.asked, look.candidate))}
      >
        {say(look.keys.length === 0 ? 'choose.inHand' : 'choose.take')}
      </button>
    </div>
  );
}

type Look = ReturnType<typeof lookAt>;

function LookWords({ look }: { readonly look: Look }) {
  const { say, units } = useWords();
  const { plan, closed, study } = look;
  if (!plan.ok || closed === null) {
    const problems = plan.ok ? [] : plan.problems;
    return (
      <ul>
        <li>{say('search.look.none')}</li>
        {problems.map((found) => (
          <li key={`${found.place} ${found.code}`}>{sayProblem(say, found, units)}</li>
        ))}
      </ul>
    );
  }
  const { layout, findings } = plan.value;
  const fields = closed.map((at) => study.result.bounds[at]?.id);
  const cautions = findings.filter(
    ({ kind, status, field }) =>
      !fields.includes(field) &&
      ((kind === 'build' && status === 'breaks') || (kind !== 'taste' && status === 'close')),
  );
  const isClose = cautions.some(({ status }) => status === 'close');
  const broken = closed.map((at) => study.result.bounds[at]).filter((bound) => bound?.limit != null);
  // A wish is no rule: what does not keep it breaks nothing.
  const answer = broken.length > 0 ? 'breaks' : closed.length > 0 ? null : isClose ? 'close' : 'meets';
  const words = closed.map((at) => {
    const bound = study.result.bounds[at];
    if (bound === undefined) return '';
    const finding = findings.find(({ field, kind }) => kind === 'rule' && field === bound.id);
    if (bound.limit !== null && finding !== undefined) {
      const figures = [actualWords(say, finding), limitWords(say, finding)].filter((part) => part !== '');
      return say('search.look.rule', { rule: ruleWords(say, bound.id), figures: figures.join(', ') });
    }
    const [reached, asked] = [bound.reached(layout) ?? 0, bound.asked ?? 0];
    if (bound.id === 'wish.stock') {
      return say('search.look.wish.stock', {
        reached: lengthText(reached, units, 'up'),
        asked: boardText(say, asked, units),
      });
    }
    const isHead = bound.id === 'wish.headroom' || bound.id === 'wish.obstacle';
    const key = bound.id === 'wish.obstacle' ? 'obstacle' : isHead ? 'headroom' : 'run';
    return say(`search.look.wish.${key}`, {
      reached: lengthText(reached, units, isHead ? 'down' : 'up'),
      asked: lengthText(asked, units),
    });
  });
  return (
    <>
      {answer === null ? <b>{say('search.look.closed')}</b> : <AnswerTag answer={answer} />}
      <p>
        {say('choose.row.unitRise')} <Figure of={figureOf(layout.flight.unitRise, units)} />
        {units === 'imperial' && ` = ${decimalOf(layout.flight.unitRise, units)}`}
      </p>
      {words.length > 0 && (
        <ul>
          {words.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {cautions.length > 0 && (
        <>
          <p className="hint">{say('search.look.cautions')}</p>
          <ul>
            {cautions.map((finding) => (
              <li key={finding.field}>
                {ruleWords(say, finding.field)}: {actualWords(say, finding)}, {limitWords(say, finding)}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** The board is the one that the search found for it, or the stair's own. */
function lookAt({ asked, study }: Studied, region: Region, { risers, steps }: Spot) {
  const { job, index, search } = asked;
  const { found, sifter } = study.result;
  const one = found.find((each) => each.top === region.top && each.risers === risers && each.steps === steps);
  const depth = one?.depth ?? sifter.candidate(region.top, risers, steps, sifter.depthCount - 1).depth;
  const candidate: Candidate = { top: region.top, risers, steps, depth };
  const keys = changesFor(job, index, search.job, candidate);
  const closed = one === undefined ? sifter.broken(region.top, risers, steps, sifter.depthPlace(depth)) : [];
  return { keys, candidate, closed, study, plan: planStair(changeStair(job, index, keys), index, BOOK, TAPE_DOUBT) };
}
