/** The single changes that were proven to clear a finding, the least first. One touch takes one. */
import { useMemo } from 'react';
import type { KeyChange } from '../../core/choose/changeStair';
import { type Cure, cureFor } from '../../core/choose/cureFor';
import type { Finding } from '../../core/codes/findings';
import { figureOf } from '../../core/drawing/figures';
import type { UnitSystem } from '../../core/units/length';
import '../../text/lateFigures';
import '../../text/lateFindings';
import { BOOK } from '../../packs/ruleBook';
import { ruleWords } from '../../text/findingText';
import type { Speaker } from '../../text/say';
import { plainFigure } from '../numbers/figures';
import { TAPE_DOUBT, useStair } from '../stairOnShow';

interface CureKeysProps {
  readonly finding: Finding;
  readonly onTake: (changes: readonly KeyChange[]) => void;
}

export function CureKeys({ finding, onTake }: CureKeysProps) {
  const { say, job, index, units } = useStair();
  const cures = useMemo(() => cureFor(job, index, finding, BOOK, TAPE_DOUBT), [job, index, finding]);
  if (cures.length === 0) return <p>{say('choose.cures.none')}</p>;
  return (
    <div className="cure-keys">
      <p className="hint">{say('choose.cure.would')}</p>
      <ul>
        {cures.map((cure) => (
          <li key={cure.changes.map(({ key, value }) => `${key} ${value}`).join()}>
            <button type="button" onClick={() => onTake(cure.changes)}>
              <b>{cureWords(say, cure, units)}</b>
              {cure.changes[0].key === 'survey.openingFraming' && <small>{say('choose.cure.house')}</small>}
              {cure.stillBroken.length > 0 && (
                <small>
                  {say('choose.cure.still', {
                    rules: cure.stillBroken.map((field) => ruleWords(say, field)).join('; '),
                  })}
                </small>
              )}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function cureWords(say: Speaker, { changes: [{ key, value }], figures }: Cure, units: UnitSystem): string {
  const unit = units === 'metric' ? 'mm' : 'in';
  const shown = key === 'steps.run' ? `${plainFigure(figureOf(figures.run, units))} ${unit}` : value;
  return say(`choose.cure.${key}`, { value: shown });
}
