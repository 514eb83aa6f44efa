import { act, render } from '@testing-library/react';
import { useEffect } from 'react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { speakerFor } from '../../src/text/say';
import { StairProvider } from '../../src/ui/StairProvider';
import { planOf, type StairOnShow, useStair, useStairNow } from '../../src/ui/stairOnShow';

const say = speakerFor('us');

function stairWith(rise: string, name = 'Sail loft stair'): StairOnShow {
  const [first] = demoJob.stairs;
  if (first === undefined) throw new Error('the example has no stair');
  const job = { ...demoJob, stairs: [{ ...first, id: name, survey: { ...first.survey, rise } }] };
  return { job, index: 0, plan: planOf(job, 0), units: 'imperial', say };
}

/** Says what each of the two ways hands out, drawing by drawing. */
function Watcher({ onSeen }: { readonly onSeen: (rises: string) => void }) {
  const [now, late] = [useStairNow(), useStair()];
  useEffect(() => onSeen([now, late].map(({ job }) => job.stairs[0]?.survey.rise).join(' / ')));
  return null;
}

async function handOut(before: StairOnShow, after: StairOnShow, atOnce: boolean): Promise<string[]> {
  const seen: string[] = [];
  const onSeen = (rises: string) => void seen.push(rises);
  const { rerender } = render(
    <StairProvider value={before} atOnce={atOnce}>
      <Watcher onSeen={onSeen} />
    </StairProvider>,
  );
  await act(async () => {
    rerender(
      <StairProvider value={after} atOnce={atOnce}>
        <Watcher onSeen={onSeen} />
      </StairProvider>,
    );
    await Promise.resolve();
  });
  return seen;
}

describe('what follows the drawing of a key', () => {
  it('is one drawing late, and then the same', async () => {
    expect(await handOut(stairWith('105 in'), stairWith('106 in'), false)).toEqual([
      '105 in / 105 in',
      '106 in / 105 in',
      '106 in / 106 in',
    ]);
  });

  it('is never late where the page may be printed in the next moment', async () => {
    expect(await handOut(stairWith('105 in'), stairWith('106 in'), true)).not.toContain('106 in / 105 in');
  });

  it('is never late with another stair', async () => {
    const other = stairWith('106 in', 'Cellar stair');
    expect(await handOut(stairWith('105 in'), other, false)).not.toContain('106 in / 105 in');
  });
});
