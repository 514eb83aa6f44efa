/**
 * Where the tape goes, for each thing that is measured: a stair and a house of simple shapes, in no
 * scale, with the tape in chalk between two crow's feet. Units of the picture are about a pixel.
 */
import { useStair, useWords } from '../stairOnShow';
import { usePlannerState } from '../usePlanner';
import { frameOf, STAIR_FRAME } from './BlankPicture';
import { DepthPicture, HeaderPicture, LandingPicture, OverheadPicture, WidthsPicture } from './detailPictures';
import { ElevationScene } from './ElevationScene';
import { Tape, TapeValue } from './Tape';
import { lengthAt, type ThingName } from './things';

const NONE: readonly string[] = [];

export function TapePicture({ thing }: { readonly thing: ThingName }) {
  const { say } = useWords();
  return (
    <svg
      className="drawing tape-picture"
      role="img"
      aria-label={say(`measure.picture.${thing}`)}
      viewBox={frameOf(thing)}
    >
      <PictureOf thing={thing} />
    </svg>
  );
}

/** The whole stair in dashes, for the place of the elevation while there is nothing to draw. */
export function StairGuess() {
  const { say } = useWords();
  return (
    <svg className="drawing stair-guess" role="img" aria-label={say('measure.guess')} viewBox={STAIR_FRAME}>
      <ElevationScene built={false} />
      <Tape from={[112, 214]} to={[112, 54]} />
      <TapeValue x={100} y={140} anchor="end" text="" />
    </svg>
  );
}

function PictureOf({ thing }: { readonly thing: ThingName }) {
  const { job, index, plan, say } = useStair();
  const text = (key: string) => lengthAt(job, index, key);
  const readings = usePlannerState((state) => state.readings[job.stairs[index]?.id ?? ''] ?? NONE);
  // Until one of its readings is taken, the picture says what the tape said last.
  const rise = readings.includes(text('survey.rise')) ? '' : readings.findLast(Boolean);
  switch (thing) {
    case 'rise':
      return (
        <>
          <ElevationScene built={plan.ok} />
          <line className="role-to-come" x1="300" y1="54" x2="96" y2="54" />
          <Tape from={[112, 214]} to={[112, 54]} />
          <TapeValue x={98} y={140} anchor="end" text={rise || text('survey.rise')} />
        </>
      );
    case 'finishes':
      return (
        <>
          <ElevationScene built={plan.ok} />
          <rect className="tape-layer" x="10" y="206" width="122" height="8" />
          <rect className="tape-layer" x="300" y="46" width="90" height="8" />
          <rect className="tape-layer" x="180" y="148" width="24" height="7" />
          <text className="tape-word" x="14" y="196">
            {say('measure.word.lower')}
          </text>
          <text className="tape-word" x="388" y="36" textAnchor="end">
            {say('measure.word.upper')}
          </text>
          <text className="tape-word" x="190" y="138" textAnchor="end">
            {say('measure.word.tread')}
          </text>
        </>
      );
    case 'landing':
      return <LandingPicture text={text('survey.footBelowReading')} />;
    case 'opening':
      return (
        <>
          <ElevationScene built={plan.ok} />
          <Tape from={[90, 42]} to={[300, 42]} />
          <TapeValue x={195} y={20} anchor="middle" text={text('survey.openingFraming')} />
        </>
      );
    case 'header':
      return <HeaderPicture header={text('survey.headerDepth')} subfloor={text('survey.upperSubfloor')} />;
    case 'depth':
      return <DepthPicture text={text('survey.floorDepth')} />;
    case 'overhead':
      return <OverheadPicture built={plan.ok} />;
    case 'widths':
      return <WidthsPicture text={text('survey.widthFraming')} />;
  }
}
