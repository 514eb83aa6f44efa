/** The bar: which job, whether it is kept, and what can be done with the whole of it. */
import { lazy, Suspense } from 'react';
import { canRedo, canUndo } from '../../state/plannerStore';
import { TERMS, type Terms, THEMES, type Theme } from '../../state/view';
import { textOf } from '../fields/makings';
import { useField } from '../fields/useField';
import { withFittingMarkStep } from '../form/markSteps';
import { useStair, useWords } from '../stairOnShow';
import { StairList } from '../stairs/StairList';
import { useBench, usePlannerState } from '../usePlanner';
import { Icon, PitchMark } from './Icon';
import { SaveLine } from './SaveLine';

const OfflineLine = lazy(() => import('./OfflineWords').then(({ OfflineLine }) => ({ default: OfflineLine })));

/** More letters than this take a second line of the bar; those that do not fit there stand in the list of stairs. */
const LONG_NAME = 30;

const UNITS = ['imperial', 'metric'] as const;

interface TopBarProps {
  readonly onOpen: () => void;
  readonly onSave: () => void;
  readonly onNew: () => void;
}

export function TopBar({ onOpen, onSave, onNew }: TopBarProps) {
  const { say, job } = useStair();
  const { actions } = useBench().planner;
  const name = job.name ?? say('app.noJobName');
  const isLong = name.length > LONG_NAME;
  const mayUndo = usePlannerState(canUndo);
  const mayRedo = usePlannerState(canRedo);
  return (
    <header className="top-bar">
      <PitchMark />
      <div className="bar-names">
        <h1 className={isLong ? 'long' : undefined} title={isLong ? name : undefined}>
          {name}
        </h1>
        <StairList />
      </div>
      <SaveLine onSave={onSave} />
      <div className="bar-actions">
        <button type="button" onClick={actions.undo} disabled={!mayUndo}>
          <Icon name="undo" />
          <span>{say('bar.undo')}</span>
        </button>
        <button type="button" onClick={actions.redo} disabled={!mayRedo}>
          <Icon name="redo" />
          <span>{say('bar.redo')}</span>
        </button>
        <button type="button" onClick={onNew}>
          <Icon name="new" />
          <span>{say('bar.newJob')}</span>
        </button>
        <button type="button" onClick={onOpen}>
          <Icon name="open" />
          <span>{say('bar.open')}</span>
        </button>
        <button type="button" className="main-button" onClick={onSave}>
          <Icon name="save" />
          <span>{say('bar.save')}</span>
        </button>
      </div>
      <ViewChoices />
    </header>
  );
}

/** The light is one touch away wherever one stands; the rest is set once. */
function ViewChoices() {
  const { say } = useWords();
  const { actions } = useBench().planner;
  const theme = usePlannerState((state) => state.theme);
  const terms = usePlannerState((state) => state.terms);
  const gloves = usePlannerState((state) => state.gloves);
  return (
    <div className="bar-view">
      <label>
        <span>{say('bar.theme')}</span>
        <select value={theme} onChange={(event) => actions.setTheme(event.currentTarget.value as Theme)}>
          {THEMES.map((value) => (
            <option key={value} value={value}>
              {say(`theme.${value}`)}
            </option>
          ))}
        </select>
      </label>
      <details className="bar-more">
        <summary>{say('bar.more')}</summary>
        <div>
          <label>
            <span>{say('bar.terms')}</span>
            <select value={terms} onChange={(event) => actions.setTerms(event.currentTarget.value as Terms)}>
              {TERMS.map((value) => (
                <option key={value} value={value}>
                  {say(`terms.${value}`)}
                </option>
              ))}
            </select>
          </label>
          <UnitsChoice />
          <label className="bar-tick">
            <input
              type="checkbox"
              checked={gloves}
              onChange={(event) => actions.look({ gloves: event.currentTarget.checked })}
            />
            <span>{say('bar.gloves')}</span>
          </label>
          <Suspense fallback={null}>
            <OfflineLine />
          </Suspense>
        </div>
      </details>
    </div>
  );
}

/** The same key as in the form, and the same refusal there if it cannot be. */
function UnitsChoice() {
  const { say } = useWords();
  const field = useField({
    place: 'units',
    show: (value) => ({ text: textOf(value, 'imperial') }),
    make: ({ text }) => ({ ok: true, value: text }),
    also: withFittingMarkStep,
  });
  return (
    <label>
      <span>{say('bar.units')}</span>
      <select
        value={field.typed.text}
        onChange={(event) => field.change({ text: event.currentTarget.value })}
        onBlur={field.leave}
      >
        {UNITS.map((value) => (
          <option key={value} value={value}>
            {say(`bar.units.${value}`)}
          </option>
        ))}
      </select>
    </label>
  );
}
