/** Floors that fall, what hangs overhead, one from the others, and how thick a finish may be: on the page. */
import { screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import type { SurveyText } from '../../src/core/job/jobText';
import { demoJob } from '../../src/document/demoJob';
import { atStep, demoWith, field, openPage } from './bench';

const survey = (demoJob.stairs[0] as (typeof demoJob.stairs)[number]).survey;
const withSurvey = (change: Partial<SurveyText>) => demoWith({ survey: { ...survey, ...change } });

describe('a floor that falls', () => {
  it('asks over what length only where it falls, and shows a toe for each stringer', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Measure');
    await user.click(screen.getByRole('button', { name: /Where it lands/ }));
    expect(screen.queryByLabelText(/over this length, across/)).toBeNull();
    await user.type(field('Floor falls to the right'), '1/2');
    expect(present().stairs[0]?.survey.fallAcross).toBe('1/2 in');
    expect(field('over this length, across')).toBeTruthy();
    const table = await screen.findByRole('table', { name: /Toe heights/ });
    expect(within(table).getAllByRole('row').length).toBeGreaterThan(2);
    expect(await screen.findByText(/Riser 1 is .* at the left edge/)).toBeTruthy();
  });

  it('says where to measure the rise again', async () => {
    const { user } = await openPage({
      firstJob: withSurvey({ footBelowReading: undefined, readingFromHeader: '0 in', fallAlong: '1 in' }),
    });
    await atStep(user, 'Measure');
    await user.click(screen.getByRole('button', { name: /Where it lands/ }));
    expect(await screen.findByText(/lower than where the tape stood/)).toBeTruthy();
  });

  it('says at which toe the risers stand, what is scribed, and where heights hold', async () => {
    const { user } = await openPage({ firstJob: withSurvey({ fallAcross: '1/2 in' }) });
    await atStep(user, 'Cut');
    expect(await screen.findByText(/^at stringer \d+, the tallest toe/)).toBeTruthy();
    const board = await screen.findByRole('rowheader', { name: /^First riser board/ });
    expect(board.textContent).toContain('scribe it to the floor');
    await atStep(user, 'Set');
    expect(await screen.findByText(/^Over the floor at the face of riser 1, in the middle/)).toBeTruthy();
    expect(await screen.findByText(/^above the floor at the face of riser 1, in the middle/)).toBeTruthy();
  });

  it('asks for no scribing of a board on a level floor', async () => {
    const { user } = await openPage();
    await atStep(user, 'Cut');
    const board = await screen.findByRole('rowheader', { name: /^First riser board/ });
    expect(board.textContent).not.toContain('scribe');
    expect(screen.queryByText(/the tallest toe/)).toBeNull();
  });

  it('refuses one that comes up to the first tread, at its field', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Measure');
    await user.click(screen.getByRole('button', { name: /Where it lands/ }));
    await user.type(field('Floor falls to the right'), '40');
    expect(present().stairs[0]?.survey.fallAcross).not.toBe('40 in');
    expect(await screen.findAllByText(/come up to the first tread/)).not.toHaveLength(0);
  });
});

describe('what hangs overhead', () => {
  it('is added, typed, judged, and taken out again', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Measure');
    await user.click(screen.getByRole('button', { name: /What hangs overhead/ }));
    await user.click(await screen.findByRole('button', { name: 'Add something overhead' }));
    expect(present().stairs[0]?.survey.obstacles).toHaveLength(1);
    const height = await screen.findByLabelText(/height of its underside/, { selector: 'input' });
    await user.clear(height);
    await user.type(height, '100 in');
    expect(present().stairs[0]?.survey.obstacles?.[0]?.height).toBe('100 in');
    await waitFor(() => expect(document.querySelector('.overhead-left')?.textContent).toContain('overhead 1'));
    await user.click(screen.getByRole('button', { name: 'Take out overhead 1' }));
    expect(present().stairs[0]?.survey.obstacles).toBeUndefined();
  });
});

describe('finishes', () => {
  it('say how thick they may come out', async () => {
    const { user } = await openPage();
    await atStep(user, 'Measure');
    await user.click(screen.getByRole('button', { name: /^Floors and treads to come/ }));
    const table = await screen.findByRole('table', { name: /How thick they may come out/ });
    expect(within(table).getByRole('row', { name: /lower floor from/ })).toBeTruthy();
  });
});

describe('one from the others', () => {
  it('is taken with one touch', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Choose');
    const key = await screen.findByRole('button', { name: /Take it: Opening, framed/ });
    const before = present().stairs[0]?.survey.openingFraming;
    await user.click(key);
    expect(present().stairs[0]?.survey.openingFraming).not.toBe(before);
    expect(screen.getByRole('table', { name: /What moves the head/ })).toBeTruthy();
  });

  it('says in words when no value does it', async () => {
    const { user } = await openPage({ firstJob: withSurvey({ floorDepth: '40 in' }) });
    await atStep(user, 'Choose');
    expect((await screen.findAllByText(/no value does it/)).length).toBeGreaterThan(1);
  });
});
