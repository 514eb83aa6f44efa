import { fireEvent, screen, waitFor, within } from '@testing-library/react';
import fc from 'fast-check';
import type { ReactNode } from 'react';
import { describe, expect, it, vi } from 'vitest';
import { explain, measuresOf } from '../../src/core/explain/explain';
import type { Explanation } from '../../src/core/explain/measures';
import { measureNamed } from '../../src/core/explain/measures';
import type { JobText } from '../../src/core/job/jobText';
import type { StairPlan } from '../../src/core/plan/planStair';
import { demoJob } from '../../src/document/demoJob';
import { isTextKey, speakerFor } from '../../src/text/say';
import { Elevation } from '../../src/ui/drawing/StairDrawings';
import { AuditPage } from '../../src/ui/explain/AuditPage';
import { nameOfMeasure } from '../../src/ui/explain/desk';
import { ExplainDesk } from '../../src/ui/explain/ExplainDesk';
import { Explained } from '../../src/ui/explain/Explained';
import {
  becauseText,
  formulaText,
  partName,
  plainValue,
  putIn,
  roundingText,
  shownText,
} from '../../src/ui/explain/explanationText';
import { MarksTable, RipsTable, StoryPole } from '../../src/ui/results/MarkTables';
import {
  BoardSheet,
  CheckSheet,
  FloorSheet,
  HeadSheet,
  SquareSheet,
  WidthSheet,
} from '../../src/ui/results/NumberSheets';
import { HeelSheet, RiseSheet, TopSheet } from '../../src/ui/results/SumSheets';
import { anyStair, planOrSkip } from '../fixtures/anyStair';
import { changed, DECK, LOFT, planOf, SLAB } from '../fixtures/stairs';
// A part by itself fetches nothing: a stair of these has a local rule.
import '../../src/ui/localReader';
import { openPart } from './part';
import { workedOut } from './workedOut';

// Every figure of every sheet is asked, in a browser made of script.
vi.setConfig({ testTimeout: 60_000 });

/** The panel comes when it is first asked for. */
const SLOWLY = { timeout: 20_000 };
const say = speakerFor('us');
const MM_PER_INCH = 25.4;

function inShownUnit({ result, unit }: Explanation, metric: boolean): number {
  if (unit === 'rad') return (result * 180) / Math.PI;
  return unit === 'mm' && !metric ? result / MM_PER_INCH : result;
}

describe('every sum', () => {
  it('is written with the symbols of its parts, and comes to its number when the values are put in', () => {
    const worked = new Set<string>();
    fc.assert(
      fc.property(anyStair, (job) => {
        const plan = planOrSkip(job);
        const { units } = plan.layout.job;
        for (const measure of measuresOf(plan)) {
          const explanation = explain(plan, measure) as Explanation;
          const { formula, terms } = explanation;
          expect(nameOfMeasure(say, measure), measure).not.toBe(measure);
          const symbols = formulaText(say, explanation, ({ symbol }) => `‹${symbol}›`);
          if (formula === 'same' || formula === 'given') {
            expect(symbols).toBeNull();
            continue;
          }
          if (symbols === null) throw new Error(`no text for ${formula}`);
          expect(isTextKey(`because.${formula}`), formula).toBe(true);
          const written = new Set([...symbols.matchAll(/‹(\w+)›/g)].map(([, symbol]) => symbol));
          expect(written, formula).toEqual(new Set(terms.map(({ symbol }) => symbol)));
          const line = formulaText(say, explanation, (term) => putIn(term, units)) as string;
          const found = workedOut(line);
          if (found === null) continue;
          worked.add(formula);
          const slack = explanation.unit === 'rad' || units === 'imperial' ? 0.01 : 0.1;
          const expected = inShownUnit(explanation, units === 'metric');
          if (!(Math.abs(found - expected) < slack)) {
            throw new Error(`${measure}: ${line} is ${found}, not ${expected}`);
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(worked.size).toBeGreaterThan(55);
  });

  it('says where each part is from, and how the outcome was rounded', () => {
    fc.assert(
      fc.property(anyStair, (job) => {
        const plan = planOrSkip(job);
        const { units } = plan.layout.job;
        for (const measure of measuresOf(plan)) {
          const explanation = explain(plan, measure) as Explanation;
          expect(becauseText(say, explanation).length).toBeGreaterThan(10);
          expect(shownText(say, plan, explanation, units)).toMatch(/\d/);
          expect(roundingText(say, plan, explanation, units)).not.toMatch(/[{}]/);
          for (const term of explanation.terms) {
            expect(partName(say, 0, term), `${measure} ${term.symbol}`).not.toMatch(/^[a-z]+\.|^field\.|[{}]/);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('keeps minus signs apart from what they are put into', () => {
    expect(plainValue(-25.4, 'mm', 'imperial')).toBe('−1');
    expect(putIn({ symbol: 'x', value: -25.4, unit: 'mm', origin: { from: 'place' } }, 'imperial')).toBe('(−1)');
    expect(plainValue(Math.PI / 4, 'rad', 'metric')).toBe('45°');
    expect(plainValue(191.5262, 'mm', 'metric')).toBe('191.526');
  });

  it('knows what is the name of a number and what is not', () => {
    expect(measureNamed('unitRise')).toBe('unitRise');
    expect(measureNamed('tip:3')).toBe('tip:3');
    for (const text of ['survey.rise', 'tip', 'tip:', 'tip:x', 'unitRise:1', 'toString', '']) {
      expect(measureNamed(text)).toBeNull();
    }
  });
});

function sheetsOf(plan: StairPlan): ReactNode {
  return (
    <>
      <RiseSheet plan={plan} />
      <HeelSheet plan={plan} />
      <TopSheet plan={plan} />
      <MarksTable plan={plan} />
      <StoryPole plan={plan} />
      <RipsTable plan={plan} />
      <CheckSheet plan={plan} />
      <FloorSheet plan={plan} />
      <SquareSheet plan={plan} />
      <BoardSheet plan={plan} />
      <HeadSheet plan={plan} />
      <WidthSheet plan={plan} />
    </>
  );
}

const plain = (text: string | null | undefined) => (text ?? '').replace(/heavy|\+/g, '+').replace(/ |in$|mm$|ft$/g, '');

describe('a figure of the sheets', () => {
  it.each<[string, JobText]>([
    ['demo', demoJob],
    ['slab, metric', SLAB],
    ['deck', DECK],
    ['level with the floor', changed(LOFT, { stringer: { top: 'level-with-floor' } })],
    ['floor laid first', changed(LOFT, { survey: { lowerLaid: 'before-stairs' } })],
    ['open risers', changed(LOFT, { steps: { riserThickness: '0 in' } })],
  ])('is explained as the very number that it shows (%s)', async (_, firstJob) => {
    const plan = planOf(firstJob);
    await openPart(<ExplainDesk goTo={() => undefined}>{sheetsOf(plan)}</ExplainDesk>, { firstJob });
    // What the sheets are made of is fetched when they are first shown.
    const explained = () => [...document.querySelectorAll<HTMLElement>('.explained')];
    await waitFor(() => expect(explained().length).toBeGreaterThan(40), SLOWLY);
    const asked = explained();
    for (const figure of asked) {
      fireEvent.click(figure);
      const panel = await screen.findByRole('dialog', {}, SLOWLY);
      const shown = panel.querySelector('.explain-figure')?.textContent;
      const written = figure.querySelector('.figure > .unseen') ?? figure;
      expect(plain(shown), figure.ariaLabel ?? '').toBe(plain(written.textContent));
      fireEvent.click(within(panel).getByRole('button', { name: 'Close' }));
    }
  });

  it('is a number and nothing else where nobody answers', async () => {
    await openPart(<Explained measure="unitRise">7 1/2</Explained>);
    expect(screen.queryByRole('button')).toBeNull();
    expect(screen.getByText('7 1/2')).toBeTruthy();
  });
});

describe('the panel', () => {
  async function openPanel(goTo = vi.fn()) {
    const plan = planOf(demoJob);
    const part = (
      <ExplainDesk goTo={goTo}>
        <Elevation plan={plan} lit={null} />
        <RiseSheet plan={plan} />
      </ExplainDesk>
    );
    const opened = await openPart(part);
    const rise = screen.getByRole('region', { name: 'Rise and run' });
    const figure = within(rise).getByRole('button', { name: 'Unit rise, 7 1/2 heavy in: where it comes from' });
    await opened.user.click(figure);
    return { ...opened, goTo, figure, panel: await screen.findByRole('dialog', { name: 'Unit rise' }, SLOWLY) };
  }

  it('says the sum in symbols and words, with the values put in, exactly and as shown', async () => {
    const { panel } = await openPanel();
    for (const text of ['H ÷ N', '105.5625 ÷ 14', '7.5402 in', 'The total rise shared out evenly over the risers.']) {
      expect(within(panel).getByText(text)).toBeTruthy();
    }
    expect(panel.textContent).toContain('7 1/2 + in rounded to the nearest 1/32 in');
  });

  it('leads to its parts, one into another, and back', async () => {
    const { panel, user } = await openPanel();
    await user.click(within(panel).getByRole('link', { name: /Total rise, finished/ }));
    expect(screen.getByRole('dialog', { name: 'Total rise, finished' }).textContent).toContain(
      '105.4375 + 0 + 0.75 − 0.625',
    );
    expect(screen.getByRole('link', { name: /Floor lower where it lands left out, so the usual size/ })).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Back to Unit rise' }));
    expect(screen.getByRole('dialog', { name: 'Unit rise' })).toBeTruthy();
    expect(screen.queryByRole('button', { name: /^Back to/ })).toBeNull();
  });

  it('gives the focus back where it came from', async () => {
    const { panel, user, figure } = await openPanel();
    expect(document.activeElement?.textContent).toBe('Unit rise');
    await user.click(within(panel).getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(document.activeElement).toBe(figure);
  });

  it('leads into the field that a part was typed in', async () => {
    const { panel, user, goTo } = await openPanel();
    await user.click(within(panel).getByRole('link', { name: /Total rise, finished/ }));
    await user.click(screen.getByRole('link', { name: /Rise today typed in the job/ }));
    await waitFor(() => expect(goTo).toHaveBeenCalledWith('stairs[0].survey.rise'));
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  it('opens from a number of the drawing, whose fields lead into the form', async () => {
    const { panel, user, goTo } = await openPanel();
    await user.click(within(panel).getByRole('button', { name: 'Close' }));
    await user.click(screen.getByRole('button', { name: /^Total run, .*: why$/ }));
    expect(await screen.findByRole('dialog', { name: 'Total run' }, SLOWLY)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Close' }));
    await user.click(screen.getByRole('button', { name: /^Opening, framed, .*change it$/ }));
    expect(goTo).toHaveBeenCalledWith('stairs[0].survey.openingFraming');
  });

  it('names the rule and its section', async () => {
    const firstJob = changed(LOFT, { steps: { risers: 'auto' } });
    const plan = planOf(firstJob);
    await openPart(
      <ExplainDesk goTo={() => undefined}>
        <Explained measure="risers">14</Explained>
      </ExplainDesk>,
      { firstJob },
    );
    fireEvent.click(screen.getByRole('button', { name: /^Risers, 14:/ }));
    const limit = plan.rules.limits.find(({ field }) => field === 'riser.max');
    expect((await screen.findByRole('dialog', {}, SLOWLY)).textContent).toContain(
      `${limit?.source}, ${limit?.section}`,
    );
  });

  it('says which value nobody knows yet', async () => {
    const firstJob = changed(LOFT, { survey: { upperToAdd: 'unknown' } });
    await openPart(
      <ExplainDesk goTo={() => undefined}>
        <Explained measure="totalRise">104</Explained>
      </ExplainDesk>,
      { firstJob },
    );
    fireEvent.click(screen.getByRole('button', { name: /^Total rise, finished/ }));
    expect((await screen.findByRole('dialog', {}, SLOWLY)).textContent).toContain(
      'not known yet; laid out with this for now',
    );
  });

  it('speaks UK terms when asked', async () => {
    const { planner } = await openPanel();
    planner.actions.setTerms('uk');
    expect(await screen.findByText('Unit rise')).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Close' }));
    fireEvent.click(screen.getByRole('button', { name: /^Two rises and a going, .*: where it comes from$/ }));
    expect((await screen.findByRole('dialog', {}, SLOWLY)).textContent).toContain('two rises and a going');
  });
});

describe('the page of all numbers', () => {
  it('has every number of the stair, and every link on it leads somewhere on it', async () => {
    const plan = planOf(LOFT);
    const goTo = vi.fn();
    const { user } = await openPart(<AuditPage plan={plan} goTo={goTo} />, { firstJob: LOFT });
    for (const measure of measuresOf(plan)) {
      expect(document.getElementById(`why-${measure.replace(':', '-')}`), measure).not.toBeNull();
    }
    for (const link of document.querySelectorAll<HTMLAnchorElement>('.audit a[href^="#why-"]')) {
      expect(document.getElementById(link.hash.slice(1)), link.hash).not.toBeNull();
    }
    expect(new Set([...document.querySelectorAll('[id]')].map(({ id }) => id)).size).toBe(
      document.querySelectorAll('[id]').length,
    );
    const [field] = screen.getAllByRole('link', { name: /Rise today/ });
    await user.click(field as HTMLElement);
    expect(goTo).toHaveBeenCalledWith('stairs[0].survey.rise');
  });

  it('prints when asked', async () => {
    const print = vi.spyOn(window, 'print').mockImplementation(() => undefined);
    const { user } = await openPart(<AuditPage plan={planOf(DECK)} goTo={() => undefined} />, { firstJob: DECK });
    await user.click(screen.getByRole('button', { name: 'Print this page' }));
    expect(print).toHaveBeenCalledOnce();
    print.mockRestore();
  });
});
