/** Everything that was measured, in both systems, to be called out aloud. */
import { parseLength } from '../../core/units/length';
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { echoOf } from '../numbers/figures';
import { useStair, useWords } from '../stairOnShow';
import { lengthAt, stateOfKey, THINGS } from './things';

/** The echo is one line in both systems: the metric part comes after the last sign. */
const ECHO = /^(?<inches>.+) (?<sign>[=≈]) (?<metric>\S+) mm$/;

export function ReadBack() {
  const { say, job, index } = useStair();
  const keys = THINGS.flatMap(({ fields }) => fields.filter(([, kind]) => kind !== 'laid').map(([key]) => key));
  const given = keys.filter((key) => stateOfKey(job, index, key) !== 'missing');
  return (
    <section className="read-back" aria-labelledby="read-back-title">
      <h3 id="read-back-title">{say('measure.back.title')}</h3>
      {given.length === 0 ? (
        <p>{say('measure.back.none')}</p>
      ) : (
        <>
          <p className="hint">{say('measure.back.lead')}</p>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('measure.back.what')}</th>
                <th scope="col">{say('measure.back.inches')}</th>
                <th scope="col">{say('measure.back.mm')}</th>
              </tr>
            </thead>
            <tbody>
              {given.map((key) => (
                <Row key={key} name={labelOf(say, placeInStair(index, key))} text={lengthAt(job, index, key)} />
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
}

function Row({ name, text }: { readonly name: string; readonly text: string }) {
  const { say } = useWords();
  const reading = parseLength(text, true);
  const both = reading.ok ? ECHO.exec(echoOf(reading.length))?.groups : undefined;
  return (
    <tr>
      <th scope="row">{name}</th>
      {both === undefined ? (
        <td colSpan={2} className="not-measured">
          {text === '' ? say('measure.back.notKnown') : text}
        </td>
      ) : (
        <>
          <td>
            {both['inches']?.split(' = ').map((part, at) => (
              <span key={part}>{at === 0 ? part : ` = ${part}`}</span>
            ))}
          </td>
          <td>{`${both['sign'] === '≈' ? '≈ ' : ''}${both['metric']}`}</td>
        </>
      )}
    </tr>
  );
}
