/** A length that was surely not meant is said to be odd where it is typed; nothing is refused for it. */
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { useStair } from '../stairOnShow';
import { isOdd } from './plausible';
import { lengthAt, type Thing } from './things';

export function OddWords({ thing }: { readonly thing: Thing }) {
  const { say, job, index } = useStair();
  const odd = thing.fields.filter(([key]) => isOdd(key, lengthAt(job, index, key)));
  return odd.map(([key]) => (
    <p key={key} className="odd-word">
      {say('measure.odd', { field: labelOf(say, placeInStair(index, key)), value: lengthAt(job, index, key) })}
    </p>
  ));
}
