import { screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { atStep, demoWith, field, openPage, readBy, retype, STEP_NAMES } from './bench';

describe('the drawings', () => {
  it('have a name and their figures as words', async () => {
    const { user } = await openPage();
    expect(screen.getByRole('img', { name: /^Side elevation: 14 risers of 7\s1\/2\s\+\sin, run 10\sin/ })).toBeTruthy();
    expect(screen.getByRole('img', { name: /^Risers as cut, 1 to 14: 7\s9\/16, 7\s9\/16/ })).toBeTruthy();
    await atStep(user, 'Lay out');
    expect(screen.getByRole('img', { name: /^Stringer laid out on a board 11\s1\/4\sin deep: 13 tips/ })).toBeTruthy();
    expect(screen.getByRole('img', { name: /^One notch on the board/ })).toBeTruthy();
    expect(screen.getByRole('img', { name: /^The toe of the stringer on the floor/ })).toBeTruthy();
    await atStep(user, 'Set');
    expect(
      await screen.findByRole('img', { name: /^The stringer at the header: its last level cut 7\s7\/8/ }),
    ).toBeTruthy();
  });

  it('light up what the field in hand means', async () => {
    const { user } = await openPage();
    expect(document.querySelectorAll('.lit')).toHaveLength(0);
    await user.click(field('Opening, framed'));
    expect(document.querySelectorAll('.lit').length).toBeGreaterThan(0);
  });
});

describe('a length in a sentence', () => {
  it('is never broken over a line, from its whole number to its unit', async () => {
    const { user } = await openPage();
    await atStep(user, 'Check');
    const findings = await screen.findByRole('region', { name: 'Against the rules' });
    await waitFor(() => expect(findings.textContent).toMatch(/\d\u00a0\d+\/\d+\u00a0(\+\u00a0)?in/));
    expect(findings.textContent).not.toMatch(/\d \d+\/\d|\d in[,.;]/);
  });

  it.each([
    ['Cut', 'Fence at'],
    ['Set', 'step'],
  ] as const)('nor in a cell of a table of the step %s', async (step, title) => {
    const { user } = await openPage();
    await atStep(user, step);
    await screen.findAllByText(title, { exact: false });
    const cells = [...document.querySelectorAll('td')].map(({ firstChild }) =>
      firstChild instanceof Text ? firstChild.data : '',
    );
    expect(cells.filter((text) => /^\d+\u00a0\d+\/\d+\u00a0(\+\u00a0)?in/.test(text)).length).toBeGreaterThan(2);
    expect(cells.filter((text) => /\d (\d+\/\d|\+|in\b)|\+ in/.test(text))).toEqual([]);
  });
});

describe('the figures', () => {
  it('are those of the printed sheet, as a tape reads', async () => {
    const { user } = await openPage();
    await atStep(user, 'Lay out');
    const marks = within(screen.getByRole('region', { name: 'Marks on the board' }));
    const rows = marks.getAllByRole('row').map((row) => row.textContent);
    expect(rows[1]).toBe('16 1/414 1/4'.replaceAll(' ', ''));
    expect(rows[3]).toContain('31');
    expect(rows).toHaveLength(15);
  });

  it('round headroom down and the opening needed up', async () => {
    const survey = { rise: '105 7/16 in', lowerToAdd: '5/8 in', upperToAdd: '3/4 in', floorDepth: '13 1/4 in' };
    const { user } = await openPage({ firstJob: demoWith({ survey: { ...survey, openingFraming: '126 in' } }) });
    await atStep(user, 'Check');
    const head = screen.getByRole('region', { name: 'Opening and head' });
    expect(head.textContent).toContain('79 15/16');
    expect(head.textContent).toContain('126 1/16');
    const findings = screen.getByRole('region', { name: 'Against the rules' });
    expect(readBy(findings)).toContain('is 79 15/16 in, at least 80 in, 1/16 in too little');
    // So near to the limit that another reading of the tape would turn it.
    expect(within(findings).getByRole('heading', { name: 'Too close to call' })).toBeTruthy();
    expect(within(findings).queryByRole('heading', { name: 'What breaks' })).toBeNull();
  });

  it('say what breaks, before everything else', async () => {
    const survey = { ...demoJob.stairs[0]?.survey, rise: '105 7/16 in', openingFraming: '120 in' };
    const { user } = await openPage({ firstJob: demoWith({ survey }) });
    await atStep(user, 'Check');
    const findings = within(screen.getByRole('region', { name: 'Against the rules' }));
    const [first] = findings.getAllByRole('heading', { level: 3 });
    expect(first?.textContent).toBe('What breaks');
    expect(findings.getByText(/, at least 80 in, .* in too little$/)).toBeTruthy();
  });

  it('say the drop in words, and that it is in the marks already', async () => {
    const { user } = await openPage();
    await atStep(user, 'Lay out');
    expect(screen.getByText(/Already dropped by 7\/16 in: the marks have it in them/)).toBeTruthy();
  });

  it('follow what is typed, at the step and at the others', async () => {
    const { user } = await openPage();
    await atStep(user, 'Choose');
    await retype(user, field('Run'), '10 1/2');
    expect(screen.getByRole('img', { name: /^Side elevation.*run 10\s1\/2\sin/ })).toBeTruthy();
    await atStep(user, 'Lay out');
    const square = screen.getByRole('region', { name: 'Square and saw' });
    expect(square.textContent).toContain('run, on the blade10.500');
  });

  it('speak UK terms when asked', async () => {
    const { user } = await openPage();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Trade words' }), 'UK');
    expect(field('Plasterboard')).toBeTruthy();
    expect(document.body.textContent).not.toContain('Wallboard');
    await atStep(user, 'Choose');
    expect(field('Going')).toBeTruthy();
  });
});

describe('words that are not ours to say', () => {
  it.each(['us', 'uk'] as const)('are nowhere on the page (%s)', async (terms) => {
    const { planner, user } = await openPage();
    planner.actions.setTerms(terms);
    for (const step of STEP_NAMES) {
      await atStep(user, step);
      // The one code that has such a word in its name, and its address.
      const words = document.body.textContent
        .replaceAll('Approved Document K', '')
        .replaceAll('www.gov.uk/government/collections/approved-documents', '');
      expect(words, step).not.toMatch(/approved|compliant|certified|\bsafe\b|passes/i);
      if (step === 'Check' || step === 'Print') expect(words).toContain('Strength is not');
    }
  });
});

it('a job with a local rule is drawn once the reader of local rules has come', async () => {
  const local = [{ field: 'headroom.min', value: '78 in', note: 'as agreed' }];
  await openPage({ firstJob: { ...demoJob, rules: { pack: 'irc-2021', local } } });
  expect(await screen.findByRole('img', { name: /^Side elevation/ })).toBeTruthy();
});
