/** Set: the header mark, the marks on the floor and across, the story pole, and the order of work. */
import { useState } from 'react';
import { setOut } from '../../core/layout/setOut';
import { laserTable, storyPole } from '../../core/layout/storyPole';
import type { StairPlan } from '../../core/plan/planStair';
import { toMm } from '../../core/units/exact';
import { parseLength, withUnit } from '../../core/units/length';
import { cellText } from '../numbers/figures';
import { StoryPole } from '../results/MarkTables';
import { FloorSheet, WidthSheet } from '../results/NumberSheets';
import { Row, Rows, Sheet } from '../results/Sheet';
import { TopSheet } from '../results/SumSheets';
import { ToesSheet } from '../results/ToesSheet';
import { useWords } from '../stairOnShow';
import { StartWalk } from '../walk/StartWalk';

const ORDER = [1, 2, 3, 4, 5, 6, 7] as const;
const FASTENERS = [1, 2, 3] as const;
const CAUTIONS = ['well', 'shore', 'loose', 'old', 'dust', 'lift', 'outside'] as const;

interface PlanProps {
  readonly plan: StairPlan;
}

export function SetStep({ plan }: PlanProps) {
  const { say } = useWords();
  return (
    <>
      <p className="step-lead">{say('set.lead')}</p>
      <div className="walk-ways">
        <StartWalk list="setting" />
        <StartWalk list="pole" />
      </div>
      <div className="sheets">
        <TopSheet plan={plan} />
        <FloorSheet plan={plan} />
        <Across plan={plan} />
        <ToesSheet plan={plan} />
        <WidthSheet plan={plan} />
        <StoryPole plan={plan} />
        <Laser plan={plan} />
      </div>
      <Sheet name="order" title={say('set.order')}>
        <ol className="order">
          {ORDER.map((number) => (
            <li key={number}>{say(`set.order.${number}`)}</li>
          ))}
        </ol>
      </Sheet>
      <Sheet name="fasteners" title={say('set.fasteners')}>
        <ul className="plain-list">
          {FASTENERS.map((number) => (
            <li key={number}>{say(`set.fasteners.${number}`)}</li>
          ))}
        </ul>
        <p className="hint">{say('set.practice')}</p>
      </Sheet>
      <Sheet name="cautions" title={say('set.cautions')}>
        <ul className="plain-list">
          {CAUTIONS.map((caution) => (
            <li key={caution}>{say(`set.caution.${caution}`)}</li>
          ))}
        </ul>
      </Sheet>
    </>
  );
}

function Across({ plan }: PlanProps) {
  const { say } = useWords();
  const marks = setOut(plan.layout, plan.sheet).flatMap(({ what, step, value }) =>
    what === 'spacer' || what === 'stringer-centre' ? [{ what, step, value }] : [],
  );
  return (
    <Sheet name="across" title={say('set.across')}>
      {marks.length === 0 ? (
        <p>{say('set.across.none')}</p>
      ) : (
        <Rows>
          {marks.map(({ what, step, value }) => (
            <Row key={`${what} ${step}`} words={say(`set.across.${what}`, { number: step })} mm={value} />
          ))}
        </Rows>
      )}
    </Sheet>
  );
}

/** The line stands wherever the tripod does: its height is asked for here and kept nowhere. */
function Laser({ plan }: PlanProps) {
  const { say, units } = useWords();
  const { slopeAlong, slopeAcross } = plan.layout.flight;
  const isLevel = slopeAlong === 0 && slopeAcross === 0;
  const [typed, setTyped] = useState(units === 'metric' ? '1000' : '40');
  const completed = withUnit(typed, units, false);
  const reading = completed.ok ? parseLength(completed.text) : null;
  const rows = reading?.ok ? laserTable(storyPole(plan.layout), toMm(reading.length)) : [];
  return (
    <Sheet name="laser" title={say('set.laser.title')}>
      <label className="laser-field">
        <span>{say('set.laser')}</span>
        <input
          type="text"
          inputMode="text"
          autoComplete="off"
          value={typed}
          aria-invalid={rows.length === 0}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        <small className="hint">{say(isLevel ? 'set.laser.hint' : 'set.laser.here')}</small>
      </label>
      {rows.length > 0 && (
        <table className="figures-table">
          <thead>
            <tr>
              <th scope="col">{say('marks.step')}</th>
              <th scope="col">{say('set.laser.finished')}</th>
              <th scope="col">{say('set.laser.stringer')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.step}>
                <th scope="row">{row.step}</th>
                <td>{cellText(row.finished, units)}</td>
                <td>{row.cut === null ? '' : cellText(row.cut, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Sheet>
  );
}
