import { act, fireEvent, render, screen, waitFor } from '@testing-library/react';
import { Profiler, useCallback } from 'react';
import { describe, expect, it, vi } from 'vitest';
import { drawBoard } from '../../src/core/drawing/board';
import { drawHeel, drawTopEnd } from '../../src/core/drawing/details';
import type { Drawing, DrawingWord, View } from '../../src/core/drawing/drawing';
import { drawElevation, elevationHeight } from '../../src/core/drawing/elevation';
import { isLitBy } from '../../src/core/drawing/lights';
import { drawStep } from '../../src/core/drawing/stepDetail';
import { clipLineToBox } from '../../src/core/drawing/strip';
import { explain } from '../../src/core/explain/explain';
import { measureNamed } from '../../src/core/explain/measures';
import { type Point, point } from '../../src/core/geometry/point';
import type { JobText } from '../../src/core/job/jobText';
import { demoJob } from '../../src/document/demoJob';
import { speakerFor } from '../../src/text/say';
import { DrawingMarks } from '../../src/ui/drawing/DrawingMarks';
import { Board, Heel, TopEnd } from '../../src/ui/drawing/LateDrawings';
import { LiveSight } from '../../src/ui/drawing/LiveSight';
import { Elevation } from '../../src/ui/drawing/StairDrawings';
import { Targets } from '../../src/ui/drawing/Targets';
import { targetAt, targetsOf } from '../../src/ui/drawing/targetBoxes';
import { nameOfAbout } from '../../src/ui/explain/desk';
import { useStairNow } from '../../src/ui/stairOnShow';
import { bare, changed, DECK, LOFT, planOf, SLAB } from '../fixtures/stairs';
import { openPart } from './part';

const words = (word: DrawingWord) => speakerFor('us')(`drawing.${word}`);
const plan = planOf(demoJob);
const UNKNOWN = changed(LOFT, {
  survey: { lowerToAdd: 'unknown', upperToAdd: 'unknown' },
  steps: { treadThickness: 'unknown' },
});
const JOBS: Readonly<Record<string, JobText>> = {
  demo: demoJob,
  loft: LOFT,
  deck: DECK,
  slab: SLAB,
  unknown: UNKNOWN,
  level: changed(LOFT, { stringer: { top: 'level-with-floor' } }),
  behind: changed(LOFT, { stringer: { top: 'hanger-behind-riser' } }),
  bare: bare('metric', '2750 mm'),
};

function drawingsOf(job: JobText, width: number): readonly Drawing[] {
  const stair = planOf(job);
  const view = { width, height: elevationHeight(width, stair) };
  return [drawElevation, drawBoard, drawHeel, drawTopEnd, drawStep].map((draw) => draw(stair, view, words));
}

/** On a place so low that the height of the stair says how close one may come. */
function ElevationNow() {
  const { plan: now } = useStairNow();
  const draw = useCallback((view: View) => drawElevation(now.ok ? now.value : plan, view, words), [now]);
  const view = { width: 2000, height: 500 };
  return <LiveSight {...{ title: 'Stair', alternative: '', view, draw, lit: null, nameOf: () => '', onAbout: null }} />;
}

async function openElevation(onAbout: (about: string) => void = () => undefined) {
  const opened = await openPart(<Elevation plan={plan} lit={null} onAbout={onAbout} />);
  const place = await screen.findByRole('group', { name: /^Side elevation: drag to move/ });
  const group = place.querySelector('svg > g') as SVGGElement;
  const moved = () => group.ownerSVGElement?.style.transform ?? '';
  // The drawing was made for one zoom, and its picture is scaled until the look comes to rest.
  const made = () => drawnWidth(place) * Number(/matrix\(([\d.]+)/.exec(group.getAttribute('transform') ?? '')?.[1]);
  const zoom = () => made() * Number(/scale\(([\d.]+)/.exec(moved())?.[1] ?? 1);
  return { ...opened, place, group, moved, made, zoom, whole: zoom() };
}

/** How wide the stringer has been drawn, in the drawing's pixels. */
function drawnWidth(place: Element): number {
  const across = [...(place.querySelector('.role-stringer')?.getAttribute('d') ?? '').matchAll(/[ML]([-\d.]+)/g)];
  const xs = across.map(([, x]) => Number(x));
  return Math.max(...xs) - Math.min(...xs);
}

/** Whether a corner or a piece of a line is in the view of a drawing that is looked at closely. */
function isAnythingSeen(place: Element): boolean {
  const svg = place.querySelector('svg');
  const [, e, f] =
    /matrix\(1 0 0 1 ([-\d.]+) ([-\d.]+)\)/.exec(svg?.firstElementChild?.getAttribute('transform') ?? '') ?? [];
  const left = -Number(e);
  const top = -Number(f);
  const view = {
    left,
    right: left + Number(svg?.getAttribute('width')),
    bottom: top,
    top: top + Number(svg?.getAttribute('height')),
  };
  if (Number.isNaN(left)) throw new Error('the drawing is not at rest');
  return [...place.querySelectorAll('path')].some((path) =>
    (path.getAttribute('d') ?? '').split('M').some((piece) => {
      const numbers = [...piece.matchAll(/([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => point(Number(x), Number(y)));
      return numbers.slice(1).some((corner, i) => clipLineToBox(numbers[i] as Point, corner, view) !== null);
    }),
  );
}

function touch(target: Element, type: string, pointerId: number, clientX: number, clientY: number): void {
  fireEvent(target, new PointerEvent(type, { bubbles: true, pointerType: 'touch', pointerId, clientX, clientY }));
}

describe('the header mark on a low elevation', () => {
  it.each([
    [480, 600],
    [560, 480],
    [736, 340],
    [976, 380],
    [1456, 380],
  ])('is dimensioned beside the floor at %i × %i, and not among its lines', (width, height) => {
    const { marks } = drawElevation(plan, { width, height }, words);
    const ends = marks.flatMap((mark) =>
      mark.kind === 'shape' && mark.about === 'headerMark' && mark.role === 'tick' ? mark.corners : [],
    );
    const floor = marks.flatMap((mark) => (mark.kind === 'shape' && mark.role === 'floor-today' ? mark.corners : []));
    expect(ends).toHaveLength(4);
    expect(Math.min(...ends.map(({ x }) => x))).toBeGreaterThan(Math.max(...floor.map(({ x }) => x)));
    // Each tick is shorter than the piece of the line that the two leave free.
    const heights = ends.map(({ y }) => y).toSorted((one, other) => one - other) as [number, number, number, number];
    expect(heights[2] - heights[1]).toBeGreaterThan(heights[1] - heights[0]);
  });
});

describe('a drawing that one can come closer to', () => {
  it('says what it shows and how to look around in it', async () => {
    const { place } = await openElevation();
    expect(screen.getByRole('img', { name: /^Side elevation: 14 risers of 7 1\/2 \+ in/ })).toBeTruthy();
    expect(place.getAttribute('tabindex')).toBe('0');
    expect(document.getElementById(place.getAttribute('aria-describedby') ?? '')?.textContent).toMatch(/arrows move/);
    for (const name of [/^Closer: Side elevation/, /^Step back: Side elevation/, /^Fit: .*Side elevation/]) {
      expect(screen.getByRole('button', { name })).toBeTruthy();
    }
  });

  it('comes closer by buttons and goes back to the whole', async () => {
    const { user, zoom, whole, place } = await openElevation();
    await user.click(screen.getByRole('button', { name: /^Closer/ }));
    await user.click(screen.getByRole('button', { name: /^Closer/ }));
    expect(zoom() / whole).toBeCloseTo(2.25, 3);
    expect(place.classList.contains('is-close')).toBe(true);
    await user.click(screen.getByRole('button', { name: /^Step back/ }));
    expect(zoom() / whole).toBeCloseTo(1.5, 3);
    await user.click(screen.getByRole('button', { name: /^Fit/ }));
    expect(zoom() / whole).toBeCloseTo(1, 3);
    expect(place.classList.contains('is-close')).toBe(false);
  });

  it('answers to plus, minus, nought and arrows when it has the focus, and leaves arrows to the page when it is whole', async () => {
    const { zoom, whole, place, moved, made } = await openElevation();
    expect(fireEvent.keyDown(place, { key: 'ArrowDown' })).toBe(true);
    expect(fireEvent.keyDown(place, { key: '+' })).toBe(false);
    expect(zoom() / whole).toBeCloseTo(1.5, 3);
    const before = moved();
    expect(fireEvent.keyDown(place, { key: 'ArrowRight' })).toBe(false);
    expect(moved()).not.toBe(before);
    // At rest it is made for that zoom, and nothing is scaled any more.
    await waitFor(() => expect(made() / whole).toBeCloseTo(1.5, 3));
    expect(moved()).toBe('');
    expect(fireEvent.keyDown(place, { key: '+', ctrlKey: true })).toBe(true);
    fireEvent.keyDown(place, { key: '0' });
    expect(zoom() / whole).toBeCloseTo(1, 3);
  });

  it('zooms by the wheel at the pointer, and leaves a wheel that turns the page to the page', async () => {
    const { zoom, whole, place } = await openElevation();
    // Outwards there is nothing more to see: the page may scroll.
    expect(fireEvent.wheel(place, { deltaY: 120 })).toBe(true);
    // The same turn of the wheel goes on with the page.
    expect(fireEvent.wheel(place, { deltaY: -120 })).toBe(true);
    expect(zoom() / whole).toBeCloseTo(1, 3);
    expect(fireEvent.wheel(place, { deltaY: -40, ctrlKey: true })).toBe(false);
    expect(zoom()).toBeGreaterThan(whole);
    expect(fireEvent.wheel(place, { deltaY: 4_000, ctrlKey: true })).toBe(false);
  });

  it('leaves one finger to the page while it is whole, and follows it once it is closer', async () => {
    const { place, moved, zoom, whole } = await openElevation();
    touch(place, 'pointerdown', 1, 300, 300);
    touch(place, 'pointermove', 1, 300, 200);
    touch(place, 'pointerup', 1, 300, 200);
    expect(zoom() / whole).toBeCloseTo(1, 3);
    touch(place, 'pointerdown', 1, 300, 300);
    touch(place, 'pointerdown', 2, 400, 300);
    touch(place, 'pointermove', 1, 250, 300);
    touch(place, 'pointermove', 2, 450, 300);
    expect(zoom() / whole).toBeCloseTo(2, 3);
    touch(place, 'pointerup', 2, 450, 300);
    const pinched = moved();
    touch(place, 'pointermove', 1, 200, 260);
    expect(moved()).not.toBe(pinched);
    touch(place, 'pointerup', 1, 200, 260);
    // Two fingers are never the page's.
    const two = new Event('touchmove', { bubbles: true, cancelable: true });
    Object.assign(two, { touches: [{}, {}] });
    expect(place.dispatchEvent(two)).toBe(false);
  });

  it('shows the whole after two taps, and ignores the palm under a pen', async () => {
    const { place, user, zoom, whole } = await openElevation();
    await user.click(screen.getByRole('button', { name: /^Closer/ }));
    const pen = (type: string) =>
      fireEvent(
        place,
        new PointerEvent(type, { bubbles: true, pointerType: 'pen', pointerId: 9, clientX: 300, clientY: 300 }),
      );
    pen('pointerdown');
    const before = zoom();
    touch(place, 'pointerdown', 1, 500, 500);
    touch(place, 'pointermove', 1, 560, 560);
    expect(zoom()).toBe(before);
    touch(place, 'pointerup', 1, 560, 560);
    pen('pointerup');
    for (let tap = 0; tap < 2; tap += 1) {
      touch(place, 'pointerdown', 3, 300, 300);
      touch(place, 'pointerup', 3, 300, 300);
    }
    expect(zoom() / whole).toBeCloseTo(1, 3);
  });

  it('sets one transform a move and renders nothing until it has come to rest', async () => {
    const renders = vi.fn();
    await openPart(
      <Profiler id="sight" onRender={renders}>
        <Elevation plan={plan} lit={null} onAbout={() => undefined} />
      </Profiler>,
    );
    const place = screen.getByRole('group', { name: /drag to move/ });
    await new Promise((resolve) => setTimeout(resolve, 10));
    const before = renders.mock.calls.length;
    const seen: MutationRecord[] = [];
    const watcher = new MutationObserver((records) => seen.push(...records));
    watcher.observe(place, { attributes: true, childList: true, subtree: true, characterData: true });
    touch(place, 'pointerdown', 1, 300, 300);
    touch(place, 'pointerdown', 2, 320, 300);
    for (let i = 1; i <= 50; i += 1) touch(place, 'pointermove', 2, 320 + 3 * i, 300);
    seen.push(...watcher.takeRecords());
    expect(renders.mock.calls.length).toBe(before);
    expect(new Set(seen.map(({ attributeName }) => attributeName))).toEqual(new Set(['style', 'class']));
    expect(seen.length).toBeLessThanOrEqual(2 * 50 + 2);
    watcher.disconnect();
    // Then it is drawn anew for that zoom: longer lines, and texts of the pixels that they always have.
    const size = () => Number(place.querySelector('.role-number-main text')?.getAttribute('font-size'));
    const [text, wide] = [size(), drawnWidth(place)];
    await waitFor(() => expect(drawnWidth(place)).toBeGreaterThan(wide * 4));
    expect(size()).toBe(text);
    expect(place.querySelector('svg > g')?.getAttribute('transform')).toMatch(/^matrix\(1 0 0 1 /);
  });
});

describe('a number on a drawing', () => {
  it('is drawn anew where a smaller stair lets nobody come as close', async () => {
    const { planner } = await openPart(<ElevationNow />);
    const place = await screen.findByRole('group', { name: /^Stair: drag to move/ });
    const scale = () =>
      Number(/matrix\(([\d.]+)/.exec(place.querySelector('svg > g')?.getAttribute('transform') ?? '')?.[1]);
    for (let presses = 0; presses < 12; presses += 1) fireEvent.keyDown(place, { key: '+' });
    const whole = drawnWidth(place);
    await waitFor(() => expect(drawnWidth(place)).toBeGreaterThan(whole));
    expect(scale()).toBe(1);
    act(() => planner.actions.edit((job) => changed(job, { survey: { rise: '30 in' } }), null));
    // Numbers keep their own size: nothing that was made for another zoom is left scaled.
    expect(scale()).toBe(1);
  });

  it('or a line is always to be seen, whatever is typed while one looks closely', async () => {
    const { planner } = await openPart(<ElevationNow />);
    const place = await screen.findByRole('group', { name: /^Stair: drag to move/ });
    const whole = drawnWidth(place);
    for (let presses = 0; presses < 12; presses += 1) fireEvent.keyDown(place, { key: '+' });
    await waitFor(() => expect(drawnWidth(place)).toBeGreaterThan(whole));
    const empty: number[] = [];
    for (let rise = 40; rise <= 160; rise += 5) {
      act(() => planner.actions.edit((job) => changed(job, { survey: { rise: `${rise} in` } }), null));
      if (!isAnythingSeen(place)) empty.push(rise);
    }
    expect(empty).toEqual([]);
  });

  it('leads to what it is about, by click and by key, under its name', async () => {
    const onAbout = vi.fn();
    const { user } = await openElevation(onAbout);
    await user.click(screen.getByRole('button', { name: 'Headroom at its tightest, 80 11/16 heavy in: why' }));
    expect(onAbout).toHaveBeenLastCalledWith('headroom');
    const opening = screen.getByRole('button', { name: 'Opening, framed, 127 in: change it' });
    opening.focus();
    await user.keyboard('{Enter}');
    expect(onAbout).toHaveBeenLastCalledWith('survey.openingFraming');
    await user.keyboard(' ');
    expect(onAbout).toHaveBeenCalledTimes(3);
  });

  it('is not what a drag ends on', async () => {
    const onAbout = vi.fn();
    const { user, place } = await openElevation(onAbout);
    await user.click(screen.getByRole('button', { name: /^Closer/ }));
    const number = screen.getByRole('button', { name: /^Headroom/ });
    touch(number, 'pointerdown', 1, 300, 300);
    touch(place, 'pointermove', 1, 340, 300);
    touch(number, 'pointerup', 1, 340, 300);
    fireEvent.click(number);
    expect(onAbout).not.toHaveBeenCalled();
  });

  it('leads nowhere where nobody leads', async () => {
    await openPart(<Heel plan={plan} lit={null} />);
    expect(screen.queryAllByRole('button')).toHaveLength(0);
  });

  it.each(Object.entries(JOBS))('is about something that there is (%s)', (_, job) => {
    const stair = planOf(job);
    const say = speakerFor('us');
    for (const width of [360, 1440]) {
      for (const drawing of drawingsOf(job, width)) {
        for (const { about } of targetsOf(drawing, 'imperial')) {
          const measure = measureNamed(about);
          if (measure !== null) expect(explain(stair, measure), about).not.toBeNull();
          expect(nameOfAbout(say, 0, about), about).not.toBe(about);
        }
      }
    }
  });

  it('has a field of a fingertip, and the nearer number wins where fields lie over each other', () => {
    for (const width of [320, 820, 1440]) {
      for (const drawing of drawingsOf(demoJob, width)) {
        const targets = targetsOf(drawing, 'imperial');
        for (const { hit, text, about } of targets) {
          expect((hit.right - hit.left) / drawing.perPixel).toBeGreaterThanOrEqual(47.999);
          expect((hit.top - hit.bottom) / drawing.perPixel).toBeGreaterThanOrEqual(47.999);
          const middle = { x: (text.left + text.right) / 2, y: (text.bottom + text.top) / 2 };
          expect(targetAt(targets, middle)?.about).toBe(about);
        }
      }
    }
  });
});

describe('what is in hand', () => {
  it.each([
    ['steps.riserThickness', Elevation],
    ['steps.treadThickness', Elevation],
    ['steps.treadThickness', Heel],
    ['steps.nosing', Elevation],
    ['steps.upperNosingThickness', Elevation],
    ['steps.upperNosingThickness', TopEnd],
    ['stringer.hanger', Elevation],
    ['stringer.hanger', TopEnd],
    ['stringer.kicker.width', Elevation],
    ['stringer.kicker.height', Heel],
    ['stringer.stockDepth', Elevation],
    ['stringer.stockDepth', Board],
    ['stringer.tipInset', Board],
    ['steps.run', Elevation],
    ['steps.risers', Elevation],
    ['survey.rise', Elevation],
    ['survey.lowerToAdd', Elevation],
    ['survey.lowerToAdd', Heel],
    ['survey.upperToAdd', TopEnd],
    ['survey.upperSubfloor', Elevation],
    ['survey.headerDepth', TopEnd],
    ['survey.floorDepth', Elevation],
    ['survey.headerLining', Elevation],
    ['survey.openingFraming', Elevation],
    ['tip:3', Board],
    ['corner:3', Board],
    ['gaugeLine', Board],
    ['headroom', Elevation],
  ] as const)('lights up: %s', async (lit, Part) => {
    await openPart(<Part plan={plan} lit={lit} />);
    expect(document.querySelectorAll('.lit').length).toBeGreaterThan(0);
  });

  it('lights nothing while nothing is', () => {
    expect(isLitBy(null, 'survey.rise')).toBe(false);
    expect(isLitBy('survey.rise', undefined)).toBe(false);
    expect(isLitBy('survey.rise', 'survey.lowerToAdd')).toBe(false);
  });
});

describe('the weight of an elevation', () => {
  it.each([768, 1180, 1920])('is at most 800 nodes for 20 risers with all dimensions, %i wide', (width) => {
    const job = changed(LOFT, { survey: { rise: '150 in', openingFraming: '180 in' }, steps: { risers: 20 } });
    const stair = planOf(job);
    for (const zoom of [1, 8]) {
      const drawing = drawElevation(stair, { width, height: elevationHeight(width, stair), zoom }, words);
      const { container, unmount } = render(
        <svg>
          <title>x</title>
          <DrawingMarks drawing={drawing} alternative="x" lit={null} />
          <Targets
            drawing={drawing}
            targets={targetsOf(drawing, 'imperial')}
            nameOf={() => 'x'}
            onAbout={() => undefined}
            placeOf={() => ({ x: 0, y: 0 })}
          />
        </svg>,
      );
      expect(container.querySelectorAll('*').length).toBeLessThanOrEqual(800);
      unmount();
    }
  });
});
