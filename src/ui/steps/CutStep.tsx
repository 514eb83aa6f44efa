/** Cut: rips and lengths by fence setting, and what must not be done with the saw. */
import { type CutRow, cutList, type FenceGroup, scribesFirstRiser } from '../../core/parts/cutList';
import { laySkirt, usualSkirt } from '../../core/parts/skirt';
import type { StairPlan } from '../../core/plan/planStair';
import { placeInStair } from '../fields/jobPlaces';
import { cellText, lengthText } from '../numbers/figures';
import { Sheet } from '../results/Sheet';
import { ToesSheet } from '../results/ToesSheet';
import { useWords } from '../stairOnShow';
import { StartWalk } from '../walk/StartWalk';
import { useGoToPlace } from './goToPlace';

const CAUTIONS = ['overcut', 'trace', 'square', 'saw', 'rip', 'knots', 'lift'] as const;

export function CutStep({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useWords();
  const { layout, sheet } = plan;
  const choice = usualSkirt(units);
  const groups = cutList(layout, sheet, laySkirt(layout.flight, choice));
  return (
    <>
      <p className="step-lead">{say('cut.lead')}</p>
      <StartWalk list="rips" />
      <WhatIsLeft plan={plan} />
      <Sheet name="fences" title={say('cut.fences')}>
        {groups.map((group) => (
          <Fence key={group.setting ?? 'none'} group={group} isScribed={scribesFirstRiser(plan)} />
        ))}
        <p className="hint">
          {say('cut.skirt', { margin: lengthText(choice.margin, units), base: lengthText(choice.baseHeight, units) })}
        </p>
      </Sheet>
      <ToesSheet plan={plan} />
      <ul className="cautions">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{say(`cut.caution.${caution}`)}</li>
        ))}
      </ul>
    </>
  );
}

/** Before the saw starts is when it still helps to know what the notches leave. */
function WhatIsLeft({ plan }: { readonly plan: StairPlan }) {
  const { say, units, index } = useWords();
  const goTo = useGoToPlace();
  return (
    <p className="caution">
      {say('cut.left', { throat: lengthText(plan.layout.stringer.throat, units, 'down') })}{' '}
      <button type="button" onClick={() => goTo(placeInStair(index, 'carry.species'))}>
        {say('cut.toCarry')}
      </button>
    </p>
  );
}

interface FenceProps {
  readonly group: FenceGroup;
  /** The first riser board stands on a floor that falls across. */
  readonly isScribed: boolean;
}

function Fence({ group: { setting, rows }, isScribed }: FenceProps) {
  const { say, units } = useWords();
  const title =
    setting === null ? say('cut.noFence') : say('cut.fence', { setting: lengthText(setting, units, 'down') });
  if (rows.length === 0) return null;
  return (
    <table className="figures-table fence-table">
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{say('cut.piece')}</th>
          <th scope="col">{say('cut.count')}</th>
          <th scope="col">{say('cut.length')}</th>
          <th scope="col">{say('cut.thickness')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <FenceRow key={row.piece} row={row} isScribed={isScribed && row.piece === 'first-riser'} />
        ))}
      </tbody>
    </table>
  );
}

function FenceRow({ row, isScribed }: { readonly row: CutRow; readonly isScribed: boolean }) {
  const { say, units } = useWords();
  const width = row.width === null ? null : lengthText(row.width, units, row.widthIs === 'at-least' ? 'up' : 'nearest');
  return (
    <tr>
      <th scope="row">
        {say(`cut.piece.${row.piece}`)}
        {isScribed && <small>{say('cut.scribe')}</small>}
        {row.widthIs === 'at-least' && width !== null && <small>{say('cut.atLeast', { width })}</small>}
        {row.widthIs === 'as-bought' && width !== null && <small>{say('cut.asBought', { width })}</small>}
      </th>
      <td>{row.count ?? say('cut.countUnknown')}</td>
      <td>
        {row.length === null ? say('cut.lengthUnknown') : cellText(row.length, units)}
        {row.length !== null && <small>{say(`cut.by.${row.lengthBy}`)}</small>}
      </td>
      <td>{row.thickness === null ? '' : cellText(row.thickness, units)}</td>
    </tr>
  );
}
