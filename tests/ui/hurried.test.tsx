/** What is pressed before the page has caught up with a key: neither the key is lost, nor does anybody get another thing than was read. */
import { act, configure, screen, within } from '@testing-library/react';
import { describe, expect, it, vi } from 'vitest';
import type { JobText } from '../../src/core/job/jobText';
import { demoJob } from '../../src/document/demoJob';
import { ChooseScreen } from '../../src/ui/choose/ChooseScreen';
import { useTaking } from '../../src/ui/choose/useAlternatives';
import { withValue } from '../../src/ui/fields/jobPlaces';
import { LocalLimits } from '../../src/ui/form/LocalLimits';
import { Overhead } from '../../src/ui/measure/Overhead';
import { SearchPart } from '../../src/ui/search/SearchPart';
import { openPart } from './part';

// The search works in slices, beside other test runs.
vi.setConfig({ testTimeout: 60_000 });
configure({ asyncUtilTimeout: 10_000 });

type Part = Awaited<ReturnType<typeof openPart>>;

/** Both in one breath: the button still is what was drawn before the key. */
function keyAndPress({ planner }: Part, place: string, value: unknown, button: HTMLElement): void {
  act(() => {
    planner.actions.edit((job) => withValue(job, place, value), place);
    button.click();
  });
}

const stairOf = ({ present }: Part) => present().stairs[0];
const named = (name: string | RegExp) => screen.getByRole('button', { name });

function Search() {
  const { take } = useTaking();
  return <SearchPart onTake={take} />;
}

const FOUND = 'Take 14 risers, run 10 1/16 in, Bears on the header; a riser board closes the top';

async function openSearch(firstJob: JobText = demoJob): Promise<Part> {
  const part = await openPart(<Search />, { firstJob });
  await screen.findByRole('region', { name: 'In order' });
  return part;
}

describe('a key and a press in one breath', () => {
  it('keeps the key when something overhead is added or taken out', async () => {
    const part = await openPart(<Overhead />);
    keyAndPress(part, 'stairs[0].survey.rise', '106 in', named('Add something overhead'));
    expect(stairOf(part)?.survey.rise).toBe('106 in');
    expect(stairOf(part)?.survey.obstacles).toHaveLength(1);
    keyAndPress(part, 'stairs[0].survey.obstacles[0].near', '61 in', named('Add something overhead'));
    expect(stairOf(part)?.survey.obstacles?.map(({ near }) => near)).toEqual(['61 in', '60 in']);
    keyAndPress(
      part,
      'stairs[0].survey.obstacles[0].near',
      '62 in',
      screen.getAllByRole('button', { name: /^Take out|^Remove/ })[1] as HTMLElement,
    );
    expect(stairOf(part)?.survey.obstacles?.map(({ near }) => near)).toEqual(['62 in']);
  });

  it('keeps the key when a local limit is added', async () => {
    const part = await openPart(<LocalLimits />);
    keyAndPress(part, 'stairs[0].survey.rise', '106 in', named('Add a local limit'));
    expect(stairOf(part)?.survey.rise).toBe('106 in');
    expect(part.present().rules?.local).toHaveLength(1);
  });

  it('takes the whole pair of a card', async () => {
    const part = await openPart(<ChooseScreen />);
    const side = within(await screen.findByRole('region', { name: 'Side by side' }));
    keyAndPress(
      part,
      'stairs[0].steps.risers',
      13,
      side.getByRole('button', { name: 'Take 14 risers, run 10 1/4 in' }),
    );
    expect(stairOf(part)?.steps).toMatchObject({ risers: 14, run: '10 1/4 in' });
  });

  it('takes the whole layout that the search has found', async () => {
    const part = await openSearch();
    keyAndPress(part, 'stairs[0].steps.risers', 13, named(FOUND));
    expect(stairOf(part)?.steps).toMatchObject({ risers: 14, run: '10 1/16 in' });
    expect(stairOf(part)?.stringer?.top).toBe('header-behind-riser');
  });

  it('takes nothing that was found for another stair, or in other units', async () => {
    const part = await openSearch();
    keyAndPress(part, 'stairs[0].id', 'cellar', named(FOUND));
    expect(stairOf(part)).toMatchObject({ ...demoJob.stairs[0], id: 'cellar' });
    part.close();
    const other = await openSearch();
    keyAndPress(other, 'units', 'metric', named(FOUND));
    expect(stairOf(other)).toEqual(demoJob.stairs[0]);
  });
});
