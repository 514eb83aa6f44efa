import { screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { key, lengthField, openMeasure, pad, untilPad } from './padBench';

vi.setConfig({ testTimeout: 30_000 });
afterEach(() => vi.unstubAllGlobals());

async function tap(user: Awaited<ReturnType<typeof openMeasure>>['user'], names: readonly string[]) {
  await untilPad();
  for (const name of names) await user.click(key(name));
}

describe('under a finger', () => {
  it('comes with the focus, in place of the system’s keyboard, and leaves the focus in the field', async () => {
    const { user } = await openMeasure({ firstJob: demoJob });
    expect(pad()).toBeNull();
    await user.click(lengthField('Header depth'));
    expect(await screen.findByRole('region', { name: 'Keypad for Header depth' })).toBeTruthy();
    expect(lengthField('Header depth').inputMode).toBe('none');
    await tap(user, ['9']);
    expect(document.activeElement).toBe(lengthField('Header depth'));
  });

  it('types as a hand would: kept at every key that reads, one step to undo', async () => {
    const { planner, user, present } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Rise today'));
    await tap(user, ['1', '0', '7', '5/8']);
    expect(lengthField('Rise today').value).toBe('107 5/8');
    expect(present().stairs[0]?.survey.rise).toBe('107 5/8 in');
    expect(pad()?.textContent).toContain('8′ 11 5/8″ = 107 5/8″ = 2733.7 mm');
    expect(key('5/8').getAttribute('aria-pressed')).toBe('true');
    planner.actions.undo();
    expect(present()).toEqual(demoJob);
  });

  it('knows feet, a thirty-second, a metric tape and a way back', async () => {
    const { user, present } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Opening, framed'));
    await tap(user, ['1', '0', 'feet', '7', '1/2', '1/32 heavy']);
    expect(present().stairs[0]?.survey.openingFraming).toBe("10' 7 17/32 in");
    await tap(user, ['take back', 'take back']);
    expect(lengthField('Opening, framed').value).toBe("10'");
    await tap(user, ['clear', 'mm', '3', '2', '2', '5', 'and a half']);
    expect(present().stairs[0]?.survey.openingFraming).toBe('3225.5 mm');
  });

  it('offers a minus only where it has a meaning, and “not known yet” only at a finish', async () => {
    const { user, present } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Header depth'));
    expect(within(pad() as HTMLElement).queryByRole('button', { name: 'minus' })).toBeNull();
    expect(within(pad() as HTMLElement).queryByRole('button', { name: 'not known yet' })).toBeNull();
    await user.click(lengthField('Lower floor to come'));
    await tap(user, ['minus', '1/4']);
    expect(present().stairs[0]?.survey.lowerToAdd).toEqual({ length: '-1/4 in', known: 'specified' });
    await user.click(key('not known yet'));
    expect(present().stairs[0]?.survey.lowerToAdd).toBe('unknown');
    expect(document.activeElement).toBe(lengthField('Upper floor to come'));
  });

  it('says what is refused at the field, and goes on when it reads', async () => {
    const { user, present } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Header depth'));
    await tap(user, ['mm', '2', 'point']);
    expect(lengthField('Header depth').ariaInvalid).toBe('true');
    await tap(user, ['5']);
    expect(lengthField('Header depth').ariaInvalid).toBe('false');
    expect(present().stairs[0]?.survey.headerDepth).toBe('2.5 mm');
  });

  it('goes on to the next field by its name', async () => {
    const { user } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Header depth'));
    await user.click(key('Next: Upper subfloor'));
    expect(document.activeElement).toBe(lengthField('Upper subfloor'));
    await user.click(lengthField('Spacer'));
    await user.click(key('Done'));
    expect(pad()).toBeNull();
  });

  it('gives way to the other keyboard, and comes back', async () => {
    const { user } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Header depth'));
    await user.click(key('Other keyboard'));
    expect(pad()).toBeNull();
    expect(document.activeElement).toBe(lengthField('Header depth'));
    expect(lengthField('Header depth').inputMode).toBe('text');
    await user.click(screen.getByRole('button', { name: 'Keypad' }));
    expect(pad()).toBeTruthy();
    await user.click(key('Close'));
    expect(pad()).toBeNull();
    await user.click(lengthField('Upper subfloor'));
    expect(pad()).toBeTruthy();
  });

  it('goes with the focus', async () => {
    const { user } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Header depth'));
    await user.click(screen.getByRole('button', { name: 'Elsewhere' }));
    expect(pad()).toBeNull();
    expect(document.documentElement.dataset['keypad']).toBeUndefined();
  });
});

describe('with gloves', () => {
  it('has eighths, and sixteenths as a little less and more', async () => {
    const { user, planner } = await openMeasure({ firstJob: demoJob });
    await user.click(lengthField('Header depth'));
    await user.click(key('Gloves'));
    expect(planner.store.getState().gloves).toBe(true);
    expect(document.documentElement.dataset['keypad']).toBe('gloves');
    await tap(user, ['9', '3/8', '1/16 more']);
    expect(lengthField('Header depth').value).toBe('9 7/16');
    expect(within(pad() as HTMLElement).queryByRole('button', { name: '7/16' })).toBeNull();
  });
});

describe('under a mouse', () => {
  it('is a button in the field in hand, and then stays with the fields', async () => {
    const { user } = await openMeasure({ firstJob: demoJob, finger: false });
    await user.click(lengthField('Header depth'));
    expect(pad()).toBeNull();
    expect(lengthField('Header depth').inputMode).toBe('text');
    await user.click(screen.getByRole('button', { name: 'Keypad' }));
    expect(document.activeElement).toBe(lengthField('Header depth'));
    await tap(user, ['9', '1/4']);
    expect(lengthField('Header depth').value).toBe('9 1/4');
    await user.click(lengthField('Upper subfloor'));
    expect(screen.getByRole('region', { name: 'Keypad for Upper subfloor' })).toBeTruthy();
    await user.click(key('Close'));
    expect(pad()).toBeNull();
    expect(document.activeElement).toBe(lengthField('Upper subfloor'));
  });

  it('can be reached and used with the keyboard, and the field is left when the pad is', async () => {
    const { user, present, planner } = await openMeasure({ firstJob: demoJob, finger: false });
    await user.click(lengthField('Header depth'));
    await user.click(screen.getByRole('button', { name: 'Keypad' }));
    key('9').focus();
    expect(pad()).toBeTruthy();
    await user.keyboard('{Enter}');
    expect(present().stairs[0]?.survey.headerDepth).toBe('9 in');
    screen.getByRole('button', { name: 'Elsewhere' }).focus();
    expect(planner.store.getState().history.gesture).toBeNull();
  });
});
