/**
 * One thing to measure: its head says what there is of it, and opens it. The fields of a closed one are
 * out of sight and still in their place: the focus that comes to one, by the keyboard or from a word
 * elsewhere on the page, opens it.
 */
import { lazy, Suspense, useEffect, useId, useRef } from 'react';
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { isAsked, StairField } from '../form/StairField';
import { useStair, useWords } from '../stairOnShow';
import { BlankPicture, frameOf } from './BlankPicture';
import { Readings } from './Readings';
import { askedOf, lengthAt, stateOfKey, stateOfThing, THINGS, type Thing, type ThingName } from './things';

const FinishEffects = lazy(() => import('./FinishEffects').then(({ FinishEffects }) => ({ default: FinishEffects })));
const FallingFloor = lazy(() => import('./FallingFloor').then(({ FallingFloor }) => ({ default: FallingFloor })));
const OddWords = lazy(() => import('./OddWords').then(({ OddWords }) => ({ default: OddWords })));
const Overhead = lazy(() => import('./Overhead').then(({ Overhead }) => ({ default: Overhead })));
const TapePicture = lazy(() => import('./TapePicture').then(({ TapePicture }) => ({ default: TapePicture })));

interface ThingPartProps {
  readonly thing: Thing;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  /** Into another one, with the focus. */
  readonly onGo: (name: ThingName) => void;
}

export function ThingPart({ thing, isOpen, onOpen, onGo }: ThingPartProps) {
  const { say, job, index } = useStair();
  const { name, fields } = thing;
  const title = useId();
  const section = useRef<HTMLElement>(null);
  const wasOpen = useRef(isOpen);
  // What closes above it would carry it out of sight.
  useEffect(() => {
    if (isOpen && !wasOpen.current && section.current !== null) bringIntoSight(section.current);
    wasOpen.current = isOpen;
  }, [isOpen]);
  const stair = job.stairs[index];
  const at = THINGS.indexOf(thing);
  const hasOverhead = stair?.survey.obstacles !== undefined;
  return (
    <section ref={section} className={isOpen ? 'thing open' : 'thing'} aria-labelledby={title} data-thing={name}>
      <ThingHead thing={thing} id={title} isOpen={isOpen} onOpen={onOpen} />
      <div className="thing-body">
        {isOpen && (
          <>
            <Suspense fallback={<BlankPicture kind="tape-picture" viewBox={frameOf(name)} />}>
              <TapePicture thing={name} />
            </Suspense>
            <p className="thing-how">{say(`measure.how.${name}`)}</p>
          </>
        )}
        {name === 'rise' && <Readings onTaken={() => onGo('finishes')} />}
        <div className="fields">
          {fields
            .filter(([key]) => isAsked(stair, key))
            .map(([key, kind]) => (
              <StairField key={`${index} ${key}`} fieldKey={key} kind={kind} />
            ))}
        </div>
        {name === 'overhead' && (isOpen || hasOverhead) && (
          <Suspense fallback={null}>
            <Overhead />
          </Suspense>
        )}
        {name === 'landing' && isOpen && (
          <Suspense fallback={null}>
            <FallingFloor />
          </Suspense>
        )}
        {name === 'finishes' && isOpen && (
          <Suspense fallback={null}>
            <FinishEffects />
          </Suspense>
        )}
        <Suspense fallback={null}>
          <OddWords thing={thing} />
        </Suspense>
        {isOpen && <ThingWays at={at} onGo={onGo} />}
      </div>
    </section>
  );
}

/** To the top of what is free: a drawing that is pinned there covers what lies under it. */
function bringIntoSight(section: HTMLElement): void {
  const drawing = document.querySelector<HTMLElement>('.desk-drawing');
  const pinned = drawing !== null && getComputedStyle(drawing).position === 'sticky' ? drawing.offsetHeight : 0;
  section.style.scrollMarginTop = `${pinned}px`;
  section.scrollIntoView({ block: 'start' });
}

interface ThingHeadProps extends Pick<ThingPartProps, 'thing' | 'isOpen' | 'onOpen'> {
  readonly id: string;
}

function ThingHead({ thing, id, isOpen, onOpen }: ThingHeadProps) {
  const { say, job, index } = useStair();
  const state = stateOfThing(job, index, thing);
  return (
    <h3 className="thing-head">
      <button type="button" id={id} aria-expanded={isOpen} onClick={onOpen}>
        <span className="thing-name">{say(`measure.${thing.name}`)}</span>
        {state !== 'done' && <span className={`thing-state state-${state}`}>{say(`measure.state.${state}`)}</span>}
        <span className="thing-value">
          {state === 'missing' ? say(`measure.without.${thing.name}`) : <Values thing={thing} />}
        </span>
      </button>
    </h3>
  );
}

function Values({ thing }: { readonly thing: Thing }) {
  const { say, job, index } = useStair();
  if (thing.name === 'overhead') {
    return say('measure.overhead.count', { count: job.stairs[index]?.survey.obstacles?.length ?? 0 });
  }
  const asked = askedOf(job, index, thing);
  return asked
    .map((key) => {
      const value =
        stateOfKey(job, index, key) === 'unknown' ? say('measure.state.unknown') : lengthAt(job, index, key);
      return asked.length === 1 ? value : `${labelOf(say, placeInStair(index, key))}: ${value}`;
    })
    .join(' · ');
}

interface ThingWaysProps {
  readonly at: number;
  readonly onGo: (name: ThingName) => void;
}

function ThingWays({ at, onGo }: ThingWaysProps) {
  const { say } = useWords();
  const [before, after] = [THINGS[at - 1], THINGS[at + 1]];
  return (
    <div className="thing-ways">
      {before !== undefined && (
        <button type="button" onClick={() => onGo(before.name)}>
          {say('measure.before', { thing: say(`measure.${before.name}`) })}
        </button>
      )}
      {after !== undefined && (
        <button type="button" className="main-button" onClick={() => onGo(after.name)}>
          {say('measure.after', { thing: say(`measure.${after.name}`) })}
        </button>
      )}
    </div>
  );
}
