/**
 * A hard finish: a thickness and how sure it is. "Not known yet" is a state of its own and never
 * a zero; what was typed before stays in sight meanwhile.
 */
import { unitsOf, useStair, useWords } from '../stairOnShow';
import { FieldFrame } from './FieldFrame';
import { idOf, labelOf } from './fieldWords';
import { keyOfPlace } from './jobPlaces';
import { Echo, LengthInput } from './LengthField';
import { finishParts, makeFinish, mayBeNegative, withoutUnit } from './makings';
import { useField } from './useField';

const STATES = ['measured', 'specified', 'assumed', 'unknown'] as const;

export function FinishField({ place }: { readonly place: string }) {
  const { say, units } = useWords();
  const field = useField({
    place,
    show: (value) => {
      const { text, known } = finishParts(value);
      return { text: withoutUnit(text, units, false), known };
    },
    make: (typed, job) => makeFinish(typed, unitsOf(job)),
  });
  const { text, known = 'unknown' } = field.typed;
  const unknown = known === 'unknown';
  // A thickness that was typed comes back when it is known again.
  const leave = unknown && text !== '' ? field.pause : field.leave;
  const stateId = `${idOf(place)}-state`;
  return (
    <FieldFrame
      place={place}
      field={field}
      note={unknown ? <LaidOutAs place={place} /> : <Echo text={text} feet={false} />}
    >
      {(described) => (
        <span className={unknown ? 'finish unknown' : 'finish'}>
          <LengthInput
            {...described}
            text={unknown ? '' : text}
            // Whoever types a thickness knows it; specified is the least that can be said of it.
            onText={(next) => field.change({ text: next, known: unknown ? 'specified' : known })}
            onLeave={leave}
            pad={{
              negative: mayBeNegative(keyOfPlace(place)),
              notKnown: () => field.change({ text, known: 'unknown' }),
            }}
          />
          <select
            id={stateId}
            aria-label={say('known.label', { field: labelOf(say, place) })}
            value={known}
            onChange={(event) => field.change({ text, known: event.currentTarget.value })}
            onBlur={leave}
          >
            {STATES.map((state) => (
              <option key={state} value={state}>
                {say(`known.${state}`)}
              </option>
            ))}
          </select>
        </span>
      )}
    </FieldFrame>
  );
}

function LaidOutAs({ place }: { readonly place: string }) {
  const { say, plan } = useStair();
  const used = plan.ok ? plan.value.defaults.find(({ key }) => key === keyOfPlace(place))?.used : undefined;
  const amount = /laid out as (.+)$/.exec(used ?? '')?.[1];
  return <>{amount === undefined ? say('known.laidOutNone') : say('known.laidOutAs', { used: amount })}</>;
}
