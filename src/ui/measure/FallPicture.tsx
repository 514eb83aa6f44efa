/** Where the level goes on a floor that is not level: along the stair, and across it. In no scale. */
import { useStair } from '../stairOnShow';
import { Tape, TapeValue } from './Tape';

export function FallPicture({ along, across }: { readonly along: string; readonly across: string }) {
  const { say } = useStair();
  return (
    <svg className="drawing tape-picture" role="img" aria-label={say('measure.picture.fall')} viewBox="0 0 400 190">
      <polygon className="role-house picture-ground" points="10,150 190,112 190,132 10,170" />
      <line className="role-floor-today" x1="10" y1="150" x2="190" y2="112" />
      <path className="role-stringer" d="M118 127V104H142V82H166V60H190V96L160 119Z" />
      <rect className="tape-layer" x="42" y="112" width="146" height="6" />
      <Tape from={[46, 142]} to={[46, 118]} />
      <TapeValue x={70} y={92} anchor="middle" text={along} />
      <text className="picture-word" x="100" y="186" textAnchor="middle">
        {say('measure.word.along')}
      </text>
      <polygon className="role-house picture-ground" points="220,120 390,152 390,172 220,140" />
      <line className="role-floor-today" x1="220" y1="120" x2="390" y2="152" />
      {[248, 300, 352].map((x) => (
        <path
          key={x}
          className="role-stringer"
          d={`M${x} 70H${x + 14}V${120 + (x - 206) * 0.188}L${x} ${120 + (x - 220) * 0.188}Z`}
        />
      ))}
      <rect className="role-tread" x="240" y="62" width="134" height="8" />
      <rect className="tape-layer" x="222" y="114" width="166" height="6" />
      <Tape from={[382, 148]} to={[382, 120]} />
      <TapeValue x={340} y={40} anchor="middle" text={across} />
      <text className="picture-word" x="305" y="186" textAnchor="middle">
        {say('measure.word.across')}
      </text>
    </svg>
  );
}
