import { screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { KNOWN_KEYS } from '../../src/document/schema';
import { atStep, demoWith, describedBy, field, form, openPage, retype, STEP_NAMES } from './bench';

const kicker = { width: '3 1/2 in', height: '1 1/2 in' };
const floor = {
  ...(demoJob.stairs[0] as (typeof demoJob.stairs)[number]).survey,
  footBelowReading: undefined,
  fallAlong: '1/4 in',
  fallAcross: '1/8 in',
  obstacles: [{ near: '60 in', far: '66 in', height: '150 in' }],
};
const level = demoWith({ survey: floor, stringer: { top: 'level-with-floor', topTreadRun: '9 in', kicker } });
const everyKey = { ...level, rules: { local: [{ field: 'riser.max', value: '8 in', note: 'county' }] } };

describe('every field', () => {
  it.each(STEP_NAMES)('has a name of its own at the step %s, and so has every other control', async (step) => {
    const { user } = await openPage({ firstJob: everyKey });
    await atStep(user, step);
    const main = within(screen.getByRole('main'));
    const controls = ['textbox', 'combobox', 'checkbox', 'button', 'link'].flatMap((role) => main.queryAllByRole(role));
    expect(controls.length).toBeGreaterThan(1);
    // A layout can be taken from its card and from the table, which is a place of its own.
    const names = controls.map((control) => `${nameOf(control)}${control.closest('table') === null ? '' : ' (table)'}`);
    expect(controls.filter((control) => nameOf(control) === '')).toEqual([]);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it('is at some step for every key of the job file, and never twice at one', async () => {
    const { user } = await openPage({ firstJob: everyKey });
    const everywhere: (string | null)[] = [];
    for (const step of STEP_NAMES) {
      await atStep(user, step);
      const places = [...document.querySelectorAll('[data-place]')].map((control) =>
        control.getAttribute('data-place'),
      );
      expect(places.filter((place, at) => places.indexOf(place) !== at)).toEqual([]);
      everywhere.push(...places);
    }
    for (const place of keysOfTheFile()) expect(everywhere, place).toContain(place);
  });

  it('never is of the number type, which would eat what it cannot read', async () => {
    const { user } = await openPage();
    for (const step of STEP_NAMES) {
      await atStep(user, step);
      expect(document.querySelectorAll('input[type="number"]')).toHaveLength(0);
    }
  });
});

describe('typing a length', () => {
  it('changes the job at every keystroke that reads, as one step to undo', async () => {
    const { user, present } = await openPage();
    await user.clear(field('Rise today'));
    await user.type(field('Rise today'), '107 5/8');
    expect(present().stairs[0]?.survey.rise).toBe('107 5/8 in');
    expect(describedBy(field('Rise today'))).toContain('8′ 11 5/8″ = 107 5/8″ = 2733.7 mm');
    await user.keyboard('{Control>}z{/Control}');
    expect(present()).toEqual(demoJob);
    expect(field('Rise today').value).toBe('105 7/16');
    await user.keyboard('{Control>}y{/Control}');
    expect(field('Rise today').value).toBe('107 5/8');
  });

  it.each([
    ["8' 11 5/8", "8' 11 5/8 in", 'a foot mark alone'],
    ['2733 mm', '2733 mm', 'another unit'],
    ['107-5/8"', '107-5/8"', 'its own unit'],
  ])('keeps %s as %s: %s', async (typed, kept) => {
    const { user, present } = await openPage();
    await retype(user, field('Rise today'), typed);
    expect(present().stairs[0]?.survey.rise).toBe(kept);
  });

  it('keeps the job and says why where the text does not read', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Lay out');
    await retype(user, field('Board depth'), 'eleven');
    expect(present()).toEqual(demoJob);
    expect(field('Board depth').value).toBe('eleven');
    expect(field('Board depth').ariaInvalid).toBe('true');
    expect(describedBy(field('Board depth'))).toContain('"eleven" is no length');
    await user.click(await inSummary('Board depth'));
    await waitFor(() => expect(document.activeElement).toBe(field('Board depth')));
  });

  it('says it at the field that was typed in, even where another one fails', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Choose');
    await retype(user, field('Run'), '2 in');
    expect(present().stairs[0]?.steps?.run).not.toBe('2 in');
    expect(field('Run').ariaInvalid).toBe('true');
    expect(describedBy(field('Run'))).toContain('with this, “Nosing” fails');
  });

  it('drops text that was never taken at undo, before anything older', async () => {
    const { user, present } = await openPage();
    await retype(user, field('Skirt board'), '1 in');
    await atStep(user, 'Lay out');
    await retype(user, field('Board depth'), 'x');
    await user.keyboard('{Control>}z{/Control}');
    expect(field('Board depth').value).toBe('11 1/4');
    expect(present().stairs[0]?.survey.skirt).toBe('1 in');
  });

  it('says what is used while it is left out', async () => {
    const { user, present } = await openPage();
    await user.clear(field('Header depth'));
    expect(describedBy(field('Header depth'))).toContain('how it bears on the header is not worked out');
    await user.keyboard('{Control>}z{/Control}');
    await atStep(user, 'Choose');
    await user.clear(field('Landing nosing thickness'));
    expect(present()).toBe(demoJob);
    await user.click(field('Carpet, treads'));
    expect(present().stairs[0]?.steps).not.toHaveProperty('upperNosingThickness');
    expect(describedBy(field('Landing nosing thickness'))).toContain('left out: 3/4 in is used');
  });

  it('is left by the keyboard through the button of the keypad, too', async () => {
    const { user, present } = await openPage();
    await user.clear(field('Header depth'));
    await user.tab();
    expect(document.activeElement).toBe(form().getByRole('button', { name: 'Keypad' }));
    expect(present()).toBe(demoJob);
    await user.tab({ shift: true });
    expect(document.activeElement).toBe(field('Header depth'));
    expect(present()).toBe(demoJob);
    await user.tab();
    await user.tab();
    expect(document.activeElement).toBe(field('Upper subfloor'));
    expect(present().stairs[0]?.survey).not.toHaveProperty('headerDepth');
  });

  it('goes on in the field when its keypad is opened by a key', async () => {
    const { user } = await openPage();
    await user.click(field('Header depth'));
    await user.tab();
    await user.keyboard('{Enter}');
    expect(await screen.findByRole('region', { name: 'Keypad for Header depth' })).toBeTruthy();
    expect(document.activeElement).toBe(field('Header depth'));
  });

  it('moves on with Enter', async () => {
    const { user } = await openPage();
    await user.type(field('Rise today'), '{Enter}');
    expect(document.activeElement).toBe(field('Lower floor to come'));
    await atStep(user, 'Choose');
    await user.type(field('Run'), '{Enter}');
    expect(document.activeElement).toBe(field('Nosing'));
  });
});

describe('half a number', () => {
  it('is no matter for the list of faults while it is being typed, only once one has paused over it', async () => {
    const { user } = await openPage();
    const list = () => screen.queryByRole('region', { name: /not in use$/ });
    await retype(user, field('Width, framed'), '36 7/');
    expect(field('Width, framed').ariaInvalid).toBe('true');
    expect(list()).toBeNull();
    await waitFor(() => expect(list()).not.toBeNull());
    await user.type(field('Width, framed'), '8');
    expect(list()).toBeNull();
  });
});

describe('going to another step and back', () => {
  it.each([
    ['Measure', { 'Rise today': 'eight feet', 'Upper floor to come': 'oak', 'Reading on the left': '105 and a bit' }],
    ['Choose', { Risers: 'some', Run: '2 in' }],
    ['Lay out', { 'Board depth': 'eleven', 'Kicker width': '0' }],
  ] as const)('keeps what was typed at %s and is not in use', async (step, fields) => {
    const { user, present } = await openPage();
    await atStep(user, step);
    for (const [name, text] of Object.entries(fields)) await retype(user, field(name), text);
    await atStep(user, 'Set');
    expect(present()).toEqual(demoJob);
    await atStep(user, step);
    for (const [name, text] of Object.entries(fields)) {
      expect(field(name).value, name).toBe(text);
      expect(field(name).ariaInvalid, name).toBe('true');
    }
  });

  it('leaves a field that was emptied left out, and the way back one step of undo', async () => {
    const { user, present } = await openPage();
    await user.clear(field('Header depth'));
    expect(present()).toBe(demoJob);
    await atStep(user, 'Cut');
    expect(present().stairs[0]?.survey).not.toHaveProperty('headerDepth');
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    await atStep(user, 'Measure');
    expect(field('Header depth').value).toBe('11 1/4');
    expect(present()).toBe(demoJob);
  });

  it('comes back to the field through the list of faults, from wherever one is', async () => {
    const { user } = await openPage();
    await retype(user, field('Width, framed'), 'wide');
    await atStep(user, 'Lay out');
    await retype(user, field('Board depth'), 'eleven');
    await atStep(user, 'Check');
    expect(await screen.findByRole('region', { name: '2 fields are not in use' })).toBeTruthy();
    await user.click(await inSummary('Width, framed'));
    await waitFor(() => expect(document.activeElement).toBe(field('Width, framed')));
    expect(screen.getByRole('heading', { level: 2, name: 'Measure' })).toBeTruthy();
    await user.click(await inSummary('Board depth'));
    await waitFor(() => expect(document.activeElement).toBe(field('Board depth')));
    expect(screen.getByRole('heading', { level: 2, name: 'Lay out' })).toBeTruthy();
  });

  it('goes from what is missing to its field, also to a step that was never shown before', async () => {
    const rise = { ...demoJob.stairs[0]?.survey, rise: '' };
    const { user } = await openPage({ firstJob: demoWith({ survey: rise }) });
    await atStep(user, 'Print');
    expect(form().getByText('This stair cannot be laid out as it stands:')).toBeTruthy();
    await user.click(form().getByRole('link', { name: 'Rise today' }));
    await waitFor(() => expect(document.activeElement).toBe(field('Rise today')));
  });
});

describe('a length with two readings', () => {
  it('asks, and changes nothing until one is taken', async () => {
    const { user, present } = await openPage();
    await retype(user, field('Rise today'), '8.10');
    expect(present().stairs[0]?.survey.rise).not.toMatch(/^8\.10/);
    expect(form().getByText(/8\.10 can be read two ways/)).toBeTruthy();
    await user.click(form().getByRole('button', { name: /8′ 10″/ }));
    expect(present().stairs[0]?.survey.rise).toBe(`8' 10"`);
    expect(field('Rise today').ariaInvalid).toBe('false');
  });

  it('is a plain decimal where nobody would say feet', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Lay out');
    await retype(user, field('Board depth'), '11.5');
    expect(present().stairs[0]?.stringer?.stockDepth).toBe('11.5 in');
  });
});

describe('a finish', () => {
  it('that is not known yet makes a draft, and is a state and not a zero', async () => {
    const { user, present } = await openPage();
    const state = form().getByRole('combobox', { name: 'Upper floor to come: how sure' });
    await user.selectOptions(state, 'Not known yet');
    expect(present().stairs[0]?.survey.upperToAdd).toBe('unknown');
    const banner = await screen.findByRole('region', { name: 'Draft' });
    expect(banner.textContent).toContain('One finish is not known yet');
    await user.click(within(banner).getByRole('link', { name: 'Upper floor to come' }));
    await waitFor(() => expect(document.activeElement).toBe(field('Upper floor to come')));
    await user.selectOptions(state, 'Measured');
    expect(present().stairs[0]?.survey.upperToAdd).toEqual({ length: '3/4 in', known: 'measured' });
    expect(screen.queryByRole('region', { name: 'Draft' })).toBeNull();
  });

  it('leads from the draft to its field at a step that was never shown before', async () => {
    const steps = { ...demoJob.stairs[0]?.steps, treadThickness: 'unknown' as const };
    const { user } = await openPage({ firstJob: demoWith({ steps }) });
    await atStep(user, 'Cut');
    await user.click(within(screen.getByRole('region', { name: 'Draft' })).getByRole('link'));
    await waitFor(() => expect(document.activeElement).toBe(field('Tread thickness')));
  });
});

describe('choices and counts', () => {
  it('leaves no key of another top behind', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Lay out');
    const top = form().getByRole('combobox', { name: 'Top end' });
    await user.selectOptions(top, 'Bears on the header; a riser board closes the top');
    expect(present().stairs[0]?.stringer).toMatchObject({ top: 'header-behind-riser' });
    expect(present().stairs[0]?.stringer).not.toHaveProperty('hanger');
    expect(form().queryByRole('textbox', { name: 'Hanger board thickness' })).toBeNull();
  });

  it('counts risers one by one, or leaves them to the rules', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Choose');
    await user.click(form().getByLabelText('Risers: one more'));
    expect(present().stairs[0]?.steps?.risers).toBe(15);
    await retype(user, field('Risers'), 'auto');
    expect(present().stairs[0]?.steps?.risers).toBe('auto');
    expect(describedBy(field('Risers'))).toContain('left to the rules: 14');
  });

  it('changes units without leaving a mark step that the other tape does not have', async () => {
    const { user, present } = await openPage();
    await user.selectOptions(form().getByRole('combobox', { name: 'Units' }), 'Millimetres');
    expect(present().units).toBe('metric');
    expect(present()).not.toHaveProperty('markStep');
    expect(field('Rise today').value).toBe('105 7/16 in');
  });

  it('fetches other rules before the stair is checked by them', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Check');
    await user.selectOptions(form().getByLabelText('Rules'), 'Approved Document K, 2013');
    expect(await form().findByLabelText('Kind of building')).toBeTruthy();
    expect(present().rules?.pack).toBe('adk-2013');
    expect(await screen.findByText(/^checked by Approved Document K/)).toBeTruthy();
    await user.selectOptions(form().getByLabelText('Kind of building'), 'Service and escape stair');
    await user.selectOptions(form().getByLabelText('Rules'), 'DIN 18065, 2020-08');
    await screen.findByText(/^checked by DIN 18065/);
    expect(present().rules).toEqual({ pack: 'din-18065' });
  });

  it('puts a local limit in place of the pack’s, and takes it out again', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Check');
    await user.click(form().getByRole('button', { name: 'Add a local limit' }));
    const [first] = present().rules?.local ?? [];
    expect(first).toEqual({ field: 'width.min', value: '36 in' });
    await retype(user, field('Local limit 1: limit'), '44');
    expect(present().rules?.local?.[0]?.value).toBe('44 in');
    await user.click(form().getByRole('button', { name: 'Take out local limit 1' }));
    expect(present().rules).toEqual({ pack: 'irc-2021' });
  });
});

/** It waits until nobody is in the middle of a number. */
async function inSummary(name: string): Promise<HTMLElement> {
  return within(await screen.findByRole('region', { name: /not in use$/ })).findByRole('link', { name });
}

function nameOf(control: HTMLElement): string {
  const label = control.getAttribute('aria-label');
  if (label !== null) return label;
  const [first] = (control as HTMLInputElement).labels ?? [];
  return (first ?? control).textContent.trim();
}

/** As places; what groups others, and what is not for a person to write, left out. */
function keysOfTheFile(): string[] {
  const skipped = ['format', 'version', 'rules', 'rules.profile', 'rules.local', 'stairs'];
  return Object.entries(KNOWN_KEYS).flatMap(([owner, keys]) =>
    keys
      .map((key) => (owner === '' ? key : `${owner}.${key}`))
      .filter(
        (key) =>
          !skipped.includes(key) &&
          !/ToAdd\.|Thickness\./.test(key) &&
          !/^stairs\.(survey|survey\.obstacles|steps|stringer|carry|steps\.softCovering)$/.test(key),
      )
      .map((key) =>
        key
          .replace(/^stairs/, 'stairs[0]')
          .replace(/^rules\.local/, 'rules.local[0]')
          .replace('.obstacles.', '.obstacles[0].'),
      ),
  );
}
