/** Every finished riser as it will be after cutting, first and last large, against the rules' limit. */
import { useMemo } from 'react';
import { asCutAnswers } from '../../core/codes/asCut';
import { figureOf } from '../../core/drawing/figures';
import type { StairPlan } from '../../core/plan/planStair';
import { SvgFigure } from '../drawing/SvgFigure';
import { useWidth } from '../drawing/useSize';
import { AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { lengthText, plainFigure } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { layStrip, STRIP, type StripBoard, type StripLayout, type StripRow } from './stripLayout';

export function RiserStrip({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useStair();
  const [place, width] = useWidth<HTMLDivElement>();
  const { risers, spread } = plan.layout.stringer.asCut;
  const answer = asCutAnswers(plan.layout, plan.rules).find(({ field }) => field === 'asCut.spread');
  const limit = answer?.limitMm ?? null;
  const strip = useMemo(() => layStrip(risers, limit, units, width), [risers, limit, units, width]);
  const alternative = say('strip.alt', {
    count: risers.length,
    list: risers.map((riser) => plainFigure(figureOf(riser, units)).replace('+', 'heavy')).join(', '),
    spread: lengthText(spread, units, 'up'),
  });
  return (
    <section className="sheet riser-strip" aria-labelledby="strip-title">
      <header className="strip-head">
        <h2 id="strip-title">{say('strip.title')}</h2>
        <p className="hint">{say('strip.lead')}</p>
        <p className="strip-ends">
          {say('strip.first')} <Figure of={figureOf(risers[0] ?? 0, units)} /> {say('strip.last')}{' '}
          <Figure of={figureOf(risers.at(-1) ?? 0, units)} />
        </p>
        <p className="strip-answer">
          {say('strip.spread')} <Figure of={figureOf(spread, units, 'up')} />{' '}
          {answer === undefined ? <span>{say('strip.noLimit')}</span> : <AnswerTag answer={answer.status} />}
        </p>
      </header>
      <div className="drawing-place" ref={place}>
        <svg
          className="drawing strip"
          role="img"
          aria-label={alternative}
          viewBox={`0 0 ${width} ${strip.rows.length * STRIP.height}`}
          width={width}
          height={strip.rows.length * STRIP.height}
        >
          {strip.rows.map((row, index) => (
            <g key={row.boards[0]?.number} transform={`translate(0 ${index * STRIP.height})`}>
              <Row row={row} strip={strip} limit={limit} />
            </g>
          ))}
        </svg>
      </div>
    </section>
  );
}

interface RowProps {
  readonly row: StripRow;
  readonly strip: StripLayout;
  readonly limit: number | null;
}

function Row({ row, strip, limit }: RowProps) {
  const { say, units } = useStair();
  const { bandTop, bandBottom } = strip;
  return (
    <>
      {strip.hasBand && (
        <rect className="strip-band" x={0} y={bandTop} width={row.right} height={Math.max(0, bandBottom - bandTop)} />
      )}
      {row.boards.map((board) => (
        <Board key={board.number} board={board} />
      ))}
      {strip.hasBand && limit !== null && (
        <>
          {[bandTop, bandBottom].map((y) => (
            <line key={y} className="strip-limit" x1={0} x2={row.right + 4} y1={y} y2={y} />
          ))}
          <text className="role-caption" x={row.right + 8} y={bandTop - 10} fontSize={14}>
            {say('strip.limit')}
          </text>
          <SvgFigure
            content={figureOf(limit, units)}
            x={row.right + 12}
            y={(bandTop + bandBottom) / 2}
            anchor="start"
            size={17}
            leastDigits={12}
          />
        </>
      )}
      <line className="strip-floor" x1={0} x2={row.right} y1={STRIP.foot} y2={STRIP.foot} />
    </>
  );
}

function Board({ board }: { readonly board: StripBoard }) {
  const { say } = useStair();
  const { left, width, top, number, figure, size, off, isEnd } = board;
  const middle = left + width / 2;
  const label = number === 1 ? say('strip.first') : isEnd ? say('strip.last') : String(number);
  return (
    <g className={off === 0 ? 'strip-board' : 'strip-board offender'}>
      {off !== 0 && <rect className="strip-flag" x={left - 4} y={0} width={width + 8} height={2 * STRIP.numbers} />}
      <SvgFigure content={figure} x={middle} y={STRIP.numbers} anchor="middle" size={size} leastDigits={12} />
      <polyline className="strip-wood" points={upperPiece(left, width, top)} />
      <polyline className="strip-wood" points={lowerPiece(left, width)} />
      <rect className="strip-tread" x={left - 4} y={top} width={width + 8} height={6} />
      {off !== 0 && <HowFar off={off} middle={middle} top={top} />}
      <text
        className={isEnd ? 'strip-name end' : 'strip-name'}
        x={middle}
        y={STRIP.label}
        fontSize={15}
        textAnchor="middle"
      >
        {label}
      </text>
    </g>
  );
}

/** By how much a riser is off, and which way, in words: inside a tall board, above a short one. */
function HowFar({ off, middle, top }: { readonly off: number; readonly middle: number; readonly top: number }) {
  const { say, units } = useStair();
  const figureY = off > 0 ? top + 20 : top - 32;
  return (
    <g className="strip-off">
      <SvgFigure
        content={figureOf(Math.abs(off), units, 'up')}
        x={middle}
        y={figureY}
        anchor="middle"
        size={15}
        leastDigits={12}
      />
      <text x={middle} y={figureY + 26} fontSize={14} textAnchor="middle">
        {say(off > 0 ? 'strip.tall' : 'strip.short')}
      </text>
    </g>
  );
}

/** Saw teeth where the equal middle of all boards is left out. */
function teeth(left: number, width: number, y: number): string[] {
  const count = Math.max(2, Math.round(width / 14));
  return Array.from(
    { length: count * 2 + 1 },
    (_, i) => `${left + (width * i) / (count * 2)},${i % 2 === 0 ? y : y - 4}`,
  );
}

function upperPiece(left: number, width: number, top: number): string {
  const foot = Math.max(top + 10, STRIP.breakAt);
  return [`${left + width},${foot}`, `${left + width},${top}`, `${left},${top}`, ...teeth(left, width, foot)].join(' ');
}

function lowerPiece(left: number, width: number): string {
  const cut = STRIP.breakAt + 8;
  return [
    `${left + width},${cut}`,
    `${left + width},${STRIP.foot}`,
    `${left},${STRIP.foot}`,
    ...teeth(left, width, cut),
  ].join(' ');
}
