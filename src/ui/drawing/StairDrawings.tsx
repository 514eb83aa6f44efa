/** The drawings of one stair, each made for the width that it is given. */
import { useCallback, useMemo } from 'react';
import type { About, Drawing, DrawingWords, View } from '../../core/drawing/drawing';
import { drawElevation, elevationHeight } from '../../core/drawing/elevation';
import { measureNamed } from '../../core/explain/measures';
import type { StairPlan } from '../../core/plan/planStair';
import type { Speaker } from '../../text/say';
import { nameOfAbout, useDesk } from '../explain/desk';
import { lengthText } from '../numbers/figures';
import { useWords } from '../stairOnShow';
import { DrawingView } from './DrawingView';
import { Sight } from './Sight';
import type { Target } from './targetBoxes';
import { useWidth } from './useSize';

export interface StairDrawingProps {
  readonly plan: StairPlan;
  /** The key of the job, or the number, whose meaning lights up. */
  readonly lit: string | null;
  /** What a touched number leads to; left out, the page's own desk answers, if there is one. */
  readonly onAbout?: (about: About) => void;
  /** Pixels, where the place has a height of its own. */
  readonly height?: number;
  /** As on paper: whole, at rest, and leading nowhere. */
  readonly isStill?: boolean;
}

type Draw = (plan: StairPlan, view: View, words: DrawingWords) => Drawing;

const DEGREES = 180 / Math.PI;

export function Elevation(props: StairDrawingProps) {
  const { say, units } = useWords();
  const { plan } = props;
  const { flight } = plan.layout;
  const alternative = say('drawing.elevation.alt', {
    risers: flight.risers,
    rise: lengthText(flight.unitRise, units),
    run: lengthText(flight.run, units),
    pitch: (flight.pitch * DEGREES).toFixed(1),
    total: lengthText(flight.totalRise, units),
  });
  return (
    <Shown
      {...props}
      draw={drawElevation}
      heightFor={elevationHeight}
      alternative={alternative}
      title={say('drawing.elevation')}
    />
  );
}

export interface ShownProps extends StairDrawingProps {
  readonly draw: Draw;
  readonly heightFor: (width: number, plan: StairPlan) => number;
  readonly alternative: string;
  readonly title: string;
  /** A place that is enlarged already: one does not come closer to it. */
  readonly isDetail?: boolean;
}

export function Shown(props: ShownProps) {
  const { plan, lit, onAbout, height, draw, heightFor, alternative, title, isDetail = false, isStill = false } = props;
  const { say, index } = useWords();
  const desk = useDesk();
  const [place, width] = useWidth<HTMLDivElement>();
  const words = useDrawingWords(say);
  const tall = height ?? heightFor(width, plan);
  const drawView = useCallback((view: View) => draw(plan, view, words), [draw, plan, words]);
  const isSight = !isDetail && !isStill;
  const drawing = useMemo(() => (isSight ? null : drawView({ width, height: tall })), [isSight, drawView, width, tall]);
  const nameOf = useCallback(
    ({ about, figure }: Target) => {
      const name = nameOfAbout(say, index, about);
      if (figure === '') return name;
      const words = say(measureNamed(about) === null ? 'sight.toField' : 'sight.toWhy', { name, figure });
      // The same number may stand in several details side by side.
      return isDetail ? say('sight.inDetail', { words, title }) : words;
    },
    [say, index, isDetail, title],
  );
  const lead = { alternative, lit, nameOf, onAbout: isStill ? null : (onAbout ?? desk?.about ?? null) };
  return (
    <div className="drawing-place" ref={place}>
      {isSight && <Sight title={title} view={{ width, height: tall }} draw={drawView} {...lead} />}
      {drawing !== null && <DrawingView drawing={drawing} {...lead} />}
    </div>
  );
}

function useDrawingWords(say: Speaker): DrawingWords {
  return useCallback((word) => say(`drawing.${word}`), [say]);
}
