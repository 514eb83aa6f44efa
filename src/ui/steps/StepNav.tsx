/** The way through the job: a pole with a mark for each step; the carpenter's V points at the one in hand. */
import { STEPS, type Step } from '../../state/view';
import { useWords } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';

export function StepNav() {
  const { say } = useWords();
  const { actions } = useBench().planner;
  const step = usePlannerState((state) => state.step);
  return (
    <nav className="step-nav" aria-label={say('steps.label')}>
      <ol>
        {STEPS.map((each) => (
          <li key={each}>
            <button
              type="button"
              aria-current={each === step ? 'step' : undefined}
              onClick={() => actions.look({ step: each })}
            >
              {say(`step.${each}`)}
              <svg className="crow-foot" aria-hidden="true" viewBox="0 0 24 14" width="24" height="14">
                <path d="M2 1L12 12L22 1" />
              </svg>
            </button>
          </li>
        ))}
      </ol>
      <div className="step-pole" aria-hidden="true" />
    </nav>
  );
}

/** At the foot of each step: the one before and the one after, as large areas. */
export function StepWays() {
  const { say } = useWords();
  const { actions } = useBench().planner;
  const step = usePlannerState((state) => state.step);
  const at = STEPS.indexOf(step);
  const go = (to: Step) => {
    actions.look({ step: to });
    document.getElementById('step')?.scrollIntoView({ block: 'start' });
  };
  const [before, after] = [STEPS[at - 1], STEPS[at + 1]];
  return (
    <div className="step-ways">
      {before && (
        <button type="button" onClick={() => go(before)}>
          {say('steps.before', { step: say(`step.${before}`) })}
        </button>
      )}
      {after && (
        <button type="button" className="main-button" onClick={() => go(after)}>
          {say('steps.after', { step: say(`step.${after}`) })}
        </button>
      )}
    </div>
  );
}
