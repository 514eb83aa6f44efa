/** The tables that a board, a pole and a saw are set by. */

import type { PrintedSheet } from '../../core/check/printedSheet';
import { figureOf } from '../../core/drawing/figures';
import type { Measure } from '../../core/explain/measures';
import { scribesFirstRiser } from '../../core/parts/cutList';
import type { StairPlan } from '../../core/plan/planStair';
import { roundTo } from '../../core/units/rounding';
import { Explained } from '../explain/Explained';
import { ColumnFigure, Figure } from '../numbers/Figure';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { Sheet } from './Sheet';

interface PlanProps {
  readonly plan: StairPlan;
}

export function MarksTable({ plan: { sheet } }: PlanProps) {
  const { say, units } = useStair();
  return (
    <Sheet name="marks" title={say('marks.title')} lead={say('marks.lead')}>
      <table className="figures-table">
        <thead>
          <tr>
            <th scope="col">{say('marks.step')}</th>
            <th scope="col">{say('marks.tip')}</th>
            <th scope="col">{say('marks.corner')}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.tips.map((tip, index) => {
            const corner = sheet.corners[index];
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the step's number is its identity
              <tr key={index}>
                <th scope="row">{index + 1}</th>
                <td>
                  <Explained measure={`tip:${index + 1}`}>
                    <ColumnFigure of={figureOf(tip, units)} />
                  </Explained>
                </td>
                <td>
                  {corner !== undefined && (
                    <Explained measure={`corner:${index + 1}`}>
                      <ColumnFigure of={figureOf(corner, units)} />
                    </Explained>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={2}>
              {say('marks.end')}
              <small>{say('marks.endDepth', { depth: lengthText(sheet.endDepth, units) })}</small>
            </th>
            <td>
              <Explained measure="end">
                <ColumnFigure of={figureOf(sheet.end, units)} />
              </Explained>
            </td>
          </tr>
        </tfoot>
      </table>
    </Sheet>
  );
}

/** Each height rounded from the running total, so that no error is handed up the pole. */
export function StoryPole({ plan: { layout, sheet } }: PlanProps) {
  const { say, units } = useStair();
  const { flight, job } = layout;
  const isLevel = flight.slopeAlong === 0 && flight.slopeAcross === 0;
  const cut = job.survey.lowerLaid === 'after-stairs' ? 'poleCutToday' : 'poleCut';
  return (
    <Sheet name="pole" title={say('pole.title')} lead={say(isLevel ? 'pole.lead' : 'pole.leadHere')}>
      <table className="figures-table">
        <thead>
          <tr>
            <th scope="col">{say('marks.step')}</th>
            <th scope="col">{say('pole.finished')}</th>
            <th scope="col">{say('pole.stringer')}</th>
          </tr>
        </thead>
        <tbody>
          {flight.finishedTops.slice(1).map((top, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the step's number is its identity
            <tr key={index}>
              <th scope="row">{index + 1 === flight.risers ? say('pole.floor') : index + 1}</th>
              <td>
                <Explained measure={`pole:${index + 1}`}>
                  <ColumnFigure of={figureOf(roundTo(top, sheet.step), units)} />
                </Explained>
              </td>
              <td>
                {index < flight.treads && (
                  <Explained measure={`${cut}:${index + 1}`}>
                    <ColumnFigure
                      of={figureOf(roundTo(top - flight.treadThickness - flight.seatHeight, sheet.step), units)}
                    />
                  </Explained>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Sheet>
  );
}

export function RipsTable({ plan: { sheet, layout } }: PlanProps) {
  const { say, units } = useStair();
  const { riserOpening } = layout.rips;
  return (
    <Sheet name="rips" title={say('rips.title')} lead={say('rips.lead')}>
      <table className="figures-table">
        <thead>
          <tr>
            <th scope="col">{say('rips.piece')}</th>
            <th scope="col">{say('rips.count')}</th>
            <th scope="col">{say('rips.width')}</th>
          </tr>
        </thead>
        <tbody>
          {pieces(sheet, layout).map(({ words, count, mm, measure }) => (
            <tr key={words}>
              <th scope="row">{say(words)}</th>
              <td>{count}</td>
              <td>
                <Explained measure={measure}>
                  <Figure of={figureOf(mm, units, 'down')} />
                </Explained>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {riserOpening !== null && <p>{say('rips.open', { opening: lengthText(riserOpening, units, 'up') })}</p>}
    </Sheet>
  );
}

interface Piece {
  readonly words:
    | 'rips.treads'
    | 'rips.lastTread'
    | 'rips.firstRiser'
    | 'rips.firstRiserScribed'
    | 'rips.risers'
    | 'rips.topRiser'
    | 'rips.hanger';
  readonly count: number;
  readonly mm: number;
  readonly measure: Measure;
}

function pieces(sheet: PrintedSheet, layout: StairPlan['layout']): Piece[] {
  const { treads } = layout.flight;
  const { treadRip, lastTreadRip, riserRips, topRiserRip, hangerRip } = sheet;
  const lastDiffers = lastTreadRip !== treadRip;
  const [first, second] = riserRips;
  const list: Piece[] = [
    { words: 'rips.treads', count: lastDiffers ? treads - 1 : treads, mm: treadRip, measure: 'treadRip' },
  ];
  if (lastDiffers) list.push({ words: 'rips.lastTread', count: 1, mm: lastTreadRip, measure: 'lastTreadRip' });
  const firstRiser = scribesFirstRiser({ layout }) ? 'rips.firstRiserScribed' : 'rips.firstRiser';
  if (first !== undefined) list.push({ words: firstRiser, count: 1, mm: first, measure: 'riserRip:1' });
  if (second !== undefined)
    list.push({ words: 'rips.risers', count: riserRips.length - 1, mm: second, measure: 'riserRip:2' });
  if (topRiserRip !== null) list.push({ words: 'rips.topRiser', count: 1, mm: topRiserRip, measure: 'topRiserRip' });
  if (hangerRip !== null) list.push({ words: 'rips.hanger', count: 1, mm: hangerRip, measure: 'hangerRip' });
  return list.filter(({ count }) => count > 0);
}
