/** Risers and run a step at a time, on keys that a glove finds. */
import type { KeyChange } from '../../core/choose/changeStair';
import { figureOf } from '../../core/drawing/figures';
import type { StairPlan } from '../../core/plan/planStair';
import { divide, type Exact, inch, times, whole } from '../../core/units/exact';
import { exactText } from '../../core/units/exactText';
import type { UnitSystem } from '../../core/units/length';
import { Figure } from '../numbers/Figure';
import { decimalOf } from '../numbers/figures';
import { useStair } from '../stairOnShow';

interface SteppersProps {
  readonly plan: StairPlan;
  readonly onTake: (changes: readonly KeyChange[]) => void;
}

/** Steps that one would try on a site. Common practice, no source. */
const RUN_STEP: Readonly<Record<UnitSystem, { readonly length: Exact; readonly words: string }>> = {
  imperial: { length: inch(1 / 4), words: '1/4 in' },
  metric: { length: whole(5), words: '5 mm' },
};
const FEWEST_RISERS = 2;

export function Steppers({ plan, onTake }: SteppersProps) {
  const { say, units } = useStair();
  const { flight } = plan.layout;
  const { length, words } = RUN_STEP[units];
  const stepRun = (way: 1 | -1) => {
    const run = nextOnGrid(flight.exact.run, length, way);
    if (run !== null) onTake([{ key: 'steps.run', value: exactText(run, units) }]);
  };
  const stepRisers = (by: number) =>
    onTake([{ key: 'steps.risers', value: Math.max(FEWEST_RISERS, flight.risers + by) }]);
  return (
    <div className="choose-steppers">
      <fieldset className="stepper">
        <legend>{say('choose.risers')}</legend>
        <StepKey sign="−" name={say('choose.risers.fewer')} onPress={() => stepRisers(-1)} />
        <output>
          <b>{flight.risers}</b>
          <small>
            {say('choose.rise')} <Figure of={figureOf(flight.unitRise, units)} />
            {units === 'imperial' && ` = ${decimalOf(flight.unitRise, units)}`}
          </small>
        </output>
        <StepKey sign="+" name={say('choose.risers.more')} onPress={() => stepRisers(1)} />
      </fieldset>
      <fieldset className="stepper">
        <legend>{say('choose.run')}</legend>
        <StepKey sign="−" name={say('choose.run.less', { step: words })} onPress={() => stepRun(-1)} />
        <output>
          <Figure of={figureOf(flight.run, units)} />
          <small>± {words}</small>
        </output>
        <StepKey sign="+" name={say('choose.run.more', { step: words })} onPress={() => stepRun(1)} />
      </fieldset>
    </div>
  );
}

interface StepKeyProps {
  readonly sign: string;
  readonly name: string;
  readonly onPress: () => void;
}

function StepKey({ sign, name, onPress }: StepKeyProps) {
  return (
    <button type="button" aria-label={name} onClick={onPress}>
      {sign}
    </button>
  );
}

/** The next mark of the grid above or below, even where the length itself is on none; null at nothing. */
function nextOnGrid(length: Exact, grid: Exact, way: 1 | -1): Exact | null {
  const steps = divide(length, grid);
  const next = way === 1 ? Number(steps.num / steps.den) + 1 : Number((steps.num - 1n) / steps.den);
  return next <= 0 ? null : times(grid, next);
}
