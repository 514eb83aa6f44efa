/**
 * Measuring, one thing at a time in the order of the job. The list of things is also the list of what
 * is still missing; below it everything is read back, and what to beware of at an open stairwell.
 */
import { type KeyboardEvent, lazy, Suspense, useEffect, useRef, useState } from 'react';
import { idOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { nextStop } from '../keypad/nextStop';
import { useStair } from '../stairOnShow';
import { ThingPart } from './ThingPart';
import { stateOfThing, THINGS, type ThingName } from './things';

const ReadBack = lazy(() => import('./ReadBack').then(({ ReadBack }) => ({ default: ReadBack })));

const CAUTIONS = ['1', '2', '3'] as const;

export function MeasureScreen() {
  const { say, job, index } = useStair();
  const missing = THINGS.filter((thing) => stateOfThing(job, index, thing) === 'missing');
  const [open, setOpen] = useState<ThingName>(() => missing[0]?.name ?? 'rise');
  const screen = useRef<HTMLElement>(null);
  useEffect(() => (screen.current === null ? undefined : openForFocus(screen.current, setOpen)), []);
  const isEmpty = missing.some(({ name }) => name === 'rise');

  /** The focus in its first field is what opens it. */
  function goTo(name: ThingName): void {
    const field = document.getElementById(firstIdOf(name, index));
    if (field === null) setOpen(name);
    else field.focus();
  }

  return (
    <section ref={screen} className="measure" aria-label={say('measure.label')} onKeyDownCapture={enterMovesOn}>
      <p className="measure-lead" aria-live="polite">
        {isEmpty ? say('measure.first') : say('measure.missing', { count: missing.length })}
      </p>
      {THINGS.map((thing) => (
        <ThingPart
          key={thing.name}
          thing={thing}
          isOpen={thing.name === open}
          onOpen={() => setOpen(thing.name)}
          onGo={goTo}
        />
      ))}
      <Suspense fallback={null}>
        <ReadBack />
        <h3 className="measure-title">{say('measure.caution.title')}</h3>
        <ul className="cautions">
          {CAUTIONS.map((each) => (
            <li key={each}>{say(`measure.caution.${each}`)}</li>
          ))}
        </ul>
      </Suspense>
    </section>
  );
}

function firstIdOf(name: ThingName, index: number): string {
  if (name === 'rise') return idOf('readings.left');
  const key = THINGS.find((thing) => thing.name === name)?.fields[0]?.[0] ?? '';
  return idOf(placeInStair(index, key));
}

/** The focus that comes to a field of a closed thing opens it. */
function openForFocus(screen: HTMLElement, open: (name: ThingName) => void): () => void {
  const onFocusIn = ({ target }: FocusEvent) => {
    const body = target instanceof Element ? target.closest('.thing-body') : null;
    const found = body?.closest<HTMLElement>('[data-thing]')?.dataset['thing'];
    const thing = THINGS.find(({ name }) => name === found);
    if (thing !== undefined) open(thing.name);
  };
  screen.addEventListener('focusin', onFocusIn);
  return () => screen.removeEventListener('focusin', onFocusIn);
}

/** The same way as the keypad's: to the next field, or to what waits in between. */
function enterMovesOn(event: KeyboardEvent<HTMLElement>): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  event.stopPropagation();
  nextStop(event.target)?.go();
}
