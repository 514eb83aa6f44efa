/** One layout: its outline, its figures against the one in hand, what it breaks, and the key that takes it. */
import '../../text/lateFindings';
import type { Alternative, Outcome } from '../../core/choose/compareLayouts';
import type { StairPlan } from '../../core/plan/planStair';
import { ruleWords } from '../../text/findingText';
import { sayProblem } from '../../text/say';
import { AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { FIGURE_ROWS, type FigureRow, rowDifference, rowValue } from './figureRows';
import { answerOf } from './neighbours';
import { type ShapeFrame, StairShape } from './StairShape';

interface LayoutCardProps {
  readonly alternative: Alternative;
  readonly plan: StairPlan;
  readonly frame: ShapeFrame;
  readonly onTake: (alternative: Alternative) => void;
}

export function LayoutCard({ alternative, plan, frame, onTake }: LayoutCardProps) {
  const { say, units } = useStair();
  const { risers, run, chosen, outcome } = alternative;
  const pair = { risers, run: lengthText(run, units) };
  return (
    <li className={chosen ? 'choose-card in-hand' : 'choose-card'}>
      <div className="choose-card-head">
        {chosen && <InHandSign />}
        {/* A whole number at the end of a line, and its fraction on the next, would be read as another number. */}
        <h3 aria-label={say('choose.pair.spoken', pair)}>
          {say('choose.pair', { ...pair, run: pair.run.replaceAll(' ', '\u00a0') })}
        </h3>
      </div>
      <div className="choose-card-shape">
        {outcome !== null && (
          <StairShape
            figures={outcome.figures}
            plan={plan}
            frame={frame}
            isLow={outcome.breaksRules.includes('headroom.min')}
          />
        )}
      </div>
      {outcome === null ? <NoLayout alternative={alternative} /> : <CardFigures outcome={outcome} chosen={chosen} />}
      <div className="choose-card-answer">{outcome !== null && <Answer alternative={alternative} />}</div>
      <button
        type="button"
        className="choose-take"
        aria-pressed={chosen}
        aria-label={say(chosen ? 'choose.inHand.spoken' : 'choose.take.spoken', pair)}
        disabled={outcome === null}
        onClick={() => onTake(alternative)}
      >
        {say(chosen ? 'choose.inHand' : 'choose.take')}
      </button>
    </li>
  );
}

/** The carpenter's crow's foot: this one is in hand. */
function InHandSign() {
  return (
    <svg className="choose-v" aria-hidden="true" viewBox="0 0 28 22" width="28" height="22">
      <path d="M4 3l10 15L24 3" />
    </svg>
  );
}

function CardFigures({ outcome, chosen }: { readonly outcome: Outcome; readonly chosen: boolean }) {
  const { say } = useStair();
  return (
    <dl className="choose-figures">
      {FIGURE_ROWS.map((row) => (
        <div key={row.name} className={`choose-figure choose-figure-${row.name}`}>
          <dt>{say(`choose.row.${row.name}`)}</dt>
          <dd>
            <RowFigure row={row} outcome={outcome} />
            {!chosen && <Difference row={row} outcome={outcome} />}
          </dd>
        </div>
      ))}
    </dl>
  );
}

interface RowProps {
  readonly row: FigureRow;
  readonly outcome: Outcome;
}

/** A figure that breaks its limit stands on the board's snapped end, and says so. */
function RowFigure({ row, outcome }: RowProps) {
  const { say, units } = useStair();
  const broken = [...outcome.breaksRules, ...outcome.breaksBuild];
  const isBroken = row.limitedBy.some((field) => broken.includes(field));
  const value = rowValue(say, row, outcome.figures, units);
  const shown =
    value.kind === 'words' ? (
      <b>{value.text}</b>
    ) : (
      <>
        <Figure of={value.figure} />
        {value.decimal !== null && <span className="decimal">{value.decimal}</span>}
      </>
    );
  if (!isBroken) return <span className="choose-value">{shown}</span>;
  return (
    <span className="choose-value tag tag-breaks">
      <svg aria-hidden="true" viewBox="0 0 17 17" width="17" height="17">
        <path d="M1 9h4l2-5 3 9 2-4h4" />
      </svg>
      {shown}
      <span className="unseen">{say('tag.breaks')}</span>
    </span>
  );
}

function Difference({ row, outcome }: RowProps) {
  const { say, units } = useStair();
  const by = rowDifference(row, outcome.differences?.[row.of] ?? null, units);
  if (by === null) return null;
  return (
    <small className="choose-difference">
      <span aria-hidden="true">{say('choose.than', { sign: by.sign, figure: by.text })}</span>
      <span className="unseen">{say(by.sign === '+' ? 'choose.more' : 'choose.less', { figure: by.text })}</span>
    </small>
  );
}

function Answer({ alternative }: { readonly alternative: Alternative }) {
  const { say } = useStair();
  const answer = answerOf(alternative);
  const broken = [...(alternative.outcome?.breaksRules ?? []), ...(alternative.outcome?.breaksBuild ?? [])];
  const unchecked = alternative.outcome?.counts.rule['not-checked'] ?? 0;
  return (
    <>
      {answer !== 'none' && <AnswerTag answer={answer} />}
      {broken.length > 0 && (
        <ul className="choose-broken">
          {broken.map((field) => (
            <li key={field}>{ruleWords(say, field)}</li>
          ))}
        </ul>
      )}
      {unchecked > 0 && <p className="hint">{say('choose.unchecked', { count: unchecked })}</p>}
    </>
  );
}

function NoLayout({ alternative: { problems } }: { readonly alternative: Alternative }) {
  const { say, units } = useStair();
  return (
    <div className="choose-cannot">
      <p>
        <b>{say('choose.cannot')}</b>
      </p>
      <ul>
        {problems.map((found) => (
          <li key={`${found.place} ${found.code}`}>{sayProblem(say, found, units)}</li>
        ))}
      </ul>
    </div>
  );
}
