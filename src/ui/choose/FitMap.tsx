/** Run across, risers down: which pairs fit, told by shape. Touching one shows it beside the one in hand. */
import type { Alternative } from '../../core/choose/compareLayouts';
import { figureOf } from '../../core/drawing/figures';
import type { UnitSystem } from '../../core/units/length';
import { Figure } from '../numbers/Figure';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { answerOf, axesOf, type FitAnswer, reasonsOf } from './neighbours';
import './fit.css';

interface FitMapProps {
  readonly all: readonly Alternative[];
  readonly lookedAt: string | null;
  readonly onLook: (id: string) => void;
}

export function FitMap({ all, lookedAt, onLook }: FitMapProps) {
  const { say, units } = useStair();
  const { counts, runs } = axesOf(all);
  const chosen = all.find((one) => one.chosen);
  return (
    <section className="sheet choose-fit" aria-labelledby="choose-fit-title">
      <h2 id="choose-fit-title">{say('choose.fit')}</h2>
      <p className="hint">{say('choose.fit.lead')}</p>
      <table className="fit-map">
        <thead>
          <tr>
            <th scope="col">{say('choose.fit.run')}</th>
            {runs.map((run) => (
              <th key={run} scope="col" className={farFrom(run, runs, chosen)}>
                <Figure of={figureOf(run, units)} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {counts.map((risers) => (
            <tr key={risers}>
              <th scope="row">
                {risers} <small>{riseOf(all, risers, units)}</small>
              </th>
              {runs.map((run) => (
                <td key={run} className={farFrom(run, runs, chosen)}>
                  <Cell
                    one={all.find((each) => each.risers === risers && each.run === run)}
                    {...{ lookedAt, onLook }}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <FitKey answers={new Set(all.map(answerOf))} />
    </section>
  );
}

/** On a telephone there is no room for the runs that are farther off: they are in the list of all. */
function farFrom(run: number, runs: readonly number[], chosen: Alternative | undefined): string {
  const away = Math.abs(runs.indexOf(run) - runs.indexOf(chosen?.run ?? run));
  return away > 2 ? 'far' : '';
}

function riseOf(all: readonly Alternative[], risers: number, units: UnitSystem): string {
  const figures = all.find((one) => one.risers === risers && one.outcome !== null)?.outcome?.figures;
  return figures === undefined ? '' : lengthText(figures.unitRise, units);
}

interface CellProps {
  readonly one: Alternative | undefined;
  readonly lookedAt: string | null;
  readonly onLook: (id: string) => void;
}

function Cell({ one, lookedAt, onLook }: CellProps) {
  const { say, units } = useStair();
  if (one === undefined) return null;
  const answer = answerOf(one);
  const pair = say('choose.pair.spoken', { risers: one.risers, run: lengthText(one.run, units) });
  const count = (one.outcome?.breaksRules.length ?? 0) + (one.outcome?.breaksBuild.length ?? 0);
  const [first, ...others] = reasonsOf(one);
  const words = say(`choose.fit.${answer}`, { pair, count });
  return (
    <button
      type="button"
      className={`fit-cell fit-${answer}${one.chosen ? ' in-hand' : ''}`}
      aria-label={one.chosen ? say('choose.fit.inHand', { words }) : words}
      aria-pressed={one.id === lookedAt}
      onClick={() => onLook(one.id)}
    >
      <FitSign answer={answer} />
      {first !== undefined && (
        <small className="fit-why">
          {others.length === 0
            ? say(`choose.short.${first}`)
            : say('choose.short.many', { first: say(`choose.short.${first}`), others: others.length })}
        </small>
      )}
    </button>
  );
}

const SIGNS: Readonly<Record<FitAnswer, string>> = {
  meets: 'M5 14l6 6L23 7',
  breaks: 'M2 14h6l3-8 5 16 3-8h7',
  close: 'M10 4v20M18 4v20',
  none: 'M6 6l16 16M22 6L6 22',
};

function FitSign({ answer }: { readonly answer: FitAnswer }) {
  return (
    <svg aria-hidden="true" viewBox="0 0 28 28" width="28" height="28">
      <path d={SIGNS[answer]} />
    </svg>
  );
}

function FitKey({ answers }: { readonly answers: ReadonlySet<FitAnswer> }) {
  const { say } = useStair();
  const shown = (['meets', 'breaks', 'close', 'none'] as const).filter((answer) => answers.has(answer));
  return (
    <ul className="fit-key" aria-hidden="true">
      {shown.map((answer) => (
        <li key={answer}>
          <span className={`fit-cell fit-${answer}`}>
            <FitSign answer={answer} />
          </span>
          {say(`choose.fit.key.${answer}`)}
        </li>
      ))}
    </ul>
  );
}
