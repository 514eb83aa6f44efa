import { screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { KNOWN_KEYS } from '../../src/document/schema';
import { demoWith, describedBy, field, form, openPage, retype } from './bench';

describe('every field', () => {
  it('has a name of its own for a screen reader', async () => {
    await openPage();
    const controls = [...form().getAllByRole('textbox'), ...form().getAllByRole('combobox')];
    const names = controls.map((control) => nameOf(control));
    expect(controls.length).toBeGreaterThan(40);
    expect(names.filter((name) => name === '')).toEqual([]);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it('is there for every key of the job file', async () => {
    const kicker = { width: '3 1/2 in', height: '1 1/2 in' };
    const level = demoWith({ stringer: { top: 'level-with-floor', topTreadRun: '9 in', kicker } });
    await openPage({
      firstJob: { ...level, rules: { local: [{ field: 'riser.max', value: '8 in', note: 'county' }] } },
    });
    const places = [...document.querySelectorAll('[data-place]')].map((control) => control.getAttribute('data-place'));
    for (const place of keysOfTheFile()) expect(places, place).toContain(place);
  });

  it('never is of the number type, which would eat what it cannot read', async () => {
    await openPage();
    expect(document.querySelectorAll('input[type="number"]')).toHaveLength(0);
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
    await retype(user, field('Board depth'), 'eleven');
    expect(present()).toEqual(demoJob);
    expect(field('Board depth').value).toBe('eleven');
    expect(field('Board depth').ariaInvalid).toBe('true');
    expect(describedBy(field('Board depth'))).toContain('"eleven" is no length');
    const summary = screen.getByRole('region', { name: 'One field is not in use' });
    await user.click(within(summary).getByRole('link', { name: 'Board depth' }));
    expect(document.activeElement).toBe(field('Board depth'));
  });

  it('says it at the field that was typed in, even where another one fails', async () => {
    const { user, present } = await openPage();
    await retype(user, field('Run'), '2 in');
    expect(present().stairs[0]?.steps?.run).not.toBe('2 in');
    expect(field('Run').ariaInvalid).toBe('true');
    expect(describedBy(field('Run'))).toContain('with this, “Nosing” fails');
  });

  it('drops text that was never taken at undo, before anything older', async () => {
    const { user, present } = await openPage();
    await retype(user, field('Skirt board'), '1 in');
    await retype(user, field('Board depth'), 'x');
    await user.keyboard('{Control>}z{/Control}');
    expect(field('Board depth').value).toBe('11 1/4');
    expect(present().stairs[0]?.survey.skirt).toBe('1 in');
  });

  it('says what is used while it is left out', async () => {
    const { user, present } = await openPage();
    await user.clear(field('Landing nosing thickness'));
    expect(present()).toBe(demoJob);
    await user.tab();
    expect(present().stairs[0]?.steps).not.toHaveProperty('upperNosingThickness');
    expect(describedBy(field('Landing nosing thickness'))).toContain('left out: 3/4 in is used');
    await user.clear(field('Header depth'));
    await user.tab();
    expect(describedBy(field('Header depth'))).toContain('how it bears on the header is not worked out');
  });

  it('moves on with Enter', async () => {
    const { user } = await openPage();
    await user.type(field('Rise today'), '{Enter}');
    expect(document.activeElement).toBe(field('Floor lower where it lands'));
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
    const banner = screen.getByRole('region', { name: 'Draft' });
    expect(banner.textContent).toContain('One finish is not known yet');
    await user.click(within(banner).getByRole('link', { name: 'Upper floor to come' }));
    expect(document.activeElement).toBe(field('Upper floor to come'));
    await user.selectOptions(state, 'Measured');
    expect(present().stairs[0]?.survey.upperToAdd).toEqual({ length: '3/4 in', known: 'measured' });
    expect(screen.queryByRole('region', { name: 'Draft' })).toBeNull();
  });
});

describe('choices and counts', () => {
  it('leaves no key of another top behind', async () => {
    const { user, present } = await openPage();
    const top = form().getByRole('combobox', { name: 'Top end' });
    await user.selectOptions(top, 'Bears on the header; a riser board closes the top');
    expect(present().stairs[0]?.stringer).toMatchObject({ top: 'header-behind-riser' });
    expect(present().stairs[0]?.stringer).not.toHaveProperty('hanger');
    expect(form().queryByRole('textbox', { name: 'Hanger board thickness' })).toBeNull();
  });

  it('counts risers one by one, or leaves them to the rules', async () => {
    const { user, present } = await openPage();
    await user.click(form().getByRole('button', { name: 'Risers: one more' }));
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
    await user.click(form().getByRole('button', { name: 'Add a local limit' }));
    const [first] = present().rules?.local ?? [];
    expect(first).toEqual({ field: 'width.min', value: '36 in' });
    await retype(user, field('Local limit 1: limit'), '44');
    expect(present().rules?.local?.[0]?.value).toBe('44 in');
    await user.click(form().getByRole('button', { name: 'Take out local limit 1' }));
    expect(present().rules).toEqual({ pack: 'irc-2021' });
  });
});

function nameOf(control: HTMLElement): string {
  const label = control.getAttribute('aria-label');
  if (label !== null) return label;
  const [first] = (control as HTMLInputElement).labels ?? [];
  return first?.textContent ?? '';
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
          !/^stairs\.(survey|steps|stringer|steps\.softCovering)$/.test(key),
      )
      .map((key) => key.replace(/^stairs/, 'stairs[0]').replace(/^rules\.local/, 'rules.local[0]')),
  );
}
