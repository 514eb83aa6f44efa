/** By which rules the job is checked, what its place asks instead, how far the tape is trusted, and where codes can be looked up. */
import '../../text/lateFindings';
import { useEffect, useState } from 'react';
import { type LookupAddress, loadLookup } from '../../packs/lookup';
import { LengthField } from '../fields/LengthField';
import { CodeAddress } from '../findings/CodeAddress';
import { LocalLimits } from '../form/LocalLimits';
import { PackField, ProfileField } from '../form/PackField';
import { useStair, useWords } from '../stairOnShow';

export function RulesPart() {
  const { say } = useWords();
  return (
    <fieldset id="part-rules">
      <legend>{say('part.rules')}</legend>
      <div className="fields">
        <PackField />
        <ProfileField />
        <LengthField place="tapeDoubt" />
      </div>
      <LocalLimits />
      <Lookup />
    </fieldset>
  );
}

function Lookup() {
  const { say } = useStair();
  const [list, setList] = useState<readonly LookupAddress[]>([]);
  useEffect(() => {
    let isWanted = true;
    loadLookup().then(
      (found) => isWanted && setList(found),
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, []);
  return (
    <details className="lookup">
      <summary>{say('lookup.title')}</summary>
      <p className="hint">{say('lookup.lead')}</p>
      <ul className="bare-list">
        {list.map(({ what, addresses, mark }) => (
          <li className="lookup-row" key={what}>
            {what}: {addresses.map((address) => [<CodeAddress key={address} address={address} about={what} />, ' '])}
            <small>{say(`lookup.mark.${mark}`)}</small>
          </li>
        ))}
      </ul>
    </details>
  );
}
