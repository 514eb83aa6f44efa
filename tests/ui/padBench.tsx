/** Measuring with the keypad on a bench of its own, under a finger or under a mouse. */
import { configure, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useMemo } from 'react';
import { vi } from 'vitest';
import type { JobText } from '../../src/core/job/jobText';
import { emptyJob } from '../../src/document/emptyJob';
import { createPlanner, job as jobOf, type PlannerState } from '../../src/state/plannerStore';
import type { View } from '../../src/state/view';
import { speakerFor } from '../../src/text/say';
import { createTypingDesk } from '../../src/ui/fields/typing';
import { KeypadProvider } from '../../src/ui/keypad/Keypad';
import { MeasureScreen } from '../../src/ui/measure/MeasureScreen';
import { StairProvider } from '../../src/ui/StairProvider';
import { planOf, unitsOf } from '../../src/ui/stairOnShow';
import { type Bench, BenchContext, usePlannerState } from '../../src/ui/usePlanner';

// The keypad is fetched when it is first needed, beside other test runs.
configure({ asyncUtilTimeout: 10_000 });

interface PadBenchOptions {
  readonly firstJob?: JobText;
  readonly finger?: boolean;
  readonly view?: Partial<View>;
}

export async function openMeasure({ firstJob = emptyJob('imperial'), finger = true, view = {} }: PadBenchOptions = {}) {
  vi.stubGlobal('matchMedia', () => ({
    matches: finger,
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
  }));
  const planner = createPlanner({
    firstJob,
    drafts: { load: async () => ({ kind: 'none' }), save: async () => ({ ok: true }), takeOver: () => undefined },
    clock: { now: () => 0, after: () => () => undefined },
    view,
  });
  await planner.actions.start();
  const typing = createTypingDesk();
  planner.store.subscribe((state: PlannerState) => typing.prune(jobOf(state)));
  const user = userEvent.setup();
  const files = {} as Bench['files'];
  render(
    <BenchContext value={{ planner, files, typing }}>
      <MeasurePage />
    </BenchContext>,
  );
  return { planner, user, present: () => jobOf(planner.store.getState()) };
}

function MeasurePage() {
  const job = usePlannerState(jobOf);
  const stair = useMemo(
    () => ({ job, index: 0, plan: planOf(job, 0), units: unitsOf(job), say: speakerFor('us') }),
    [job],
  );
  return (
    <StairProvider value={stair}>
      <KeypadProvider>
        <form>
          <MeasureScreen />
        </form>
        <button type="button">Elsewhere</button>
      </KeypadProvider>
    </StairProvider>
  );
}

export function lengthField(label: string): HTMLInputElement {
  return screen.getByLabelText(label, { selector: 'input' });
}

export function pad() {
  return screen.queryByRole('region', { name: /^Keypad for / });
}

/** The pad is fetched when it is first needed. */
export async function untilPad(): Promise<void> {
  await screen.findByRole('region', { name: /^Keypad for / });
}

export function key(name: string | RegExp): HTMLElement {
  const found = pad();
  if (found === null) throw new Error('No keypad is on screen');
  return within(found).getByRole('button', { name });
}
