/** The pictures that look closer than the whole stair: floor, header, landing place, widths. In no scale. */
import { useWords } from '../stairOnShow';
import { ElevationScene } from './ElevationScene';
import { Tape, TapeValue } from './Tape';

export function LandingPicture({ text }: { readonly text: string }) {
  const { say } = useWords();
  return (
    <>
      <polygon className="role-house picture-ground" points="10,112 390,60 390,80 10,132" />
      <line className="role-floor-today" x1="10" y1="112" x2="390" y2="60" />
      <line className="role-to-come" x1="40" y1="66" x2="346" y2="66" />
      <path className="role-to-come" d="M96 100V40H132" />
      <text className="picture-word" x="200" y="56" textAnchor="middle">
        {say('measure.word.level')}
      </text>
      <text className="picture-word" x="388" y="44" textAnchor="end">
        {say('measure.word.stood')}
      </text>
      <text className="picture-word" x="62" y="154">
        {say('measure.word.lands')}
      </text>
      <Tape from={[80, 66]} to={[80, 102]} />
      <TapeValue x={64} y={36} anchor="middle" text={text} />
    </>
  );
}

export function HeaderPicture({ header, subfloor }: { readonly header: string; readonly subfloor: string }) {
  const { say } = useWords();
  return (
    <>
      <rect className="role-house" x="172" y="72" width="218" height="126" />
      <rect className="role-house" x="136" y="72" width="36" height="126" />
      <path className="role-dimension" d="M136 72L172 198M172 72L136 198" />
      <rect className="role-house" x="136" y="52" width="254" height="20" />
      <line className="role-floor-today" x1="136" y1="52" x2="390" y2="52" />
      <path className="role-to-come" d="M136 108L60 172M136 160L88 200" />
      <Tape from={[112, 198]} to={[112, 72]} />
      <TapeValue x={96} y={124} anchor="end" text={header} />
      <line className="tape-line" x1="300" y1="30" x2="300" y2="52" />
      <path className="tape-foot" d="M293 41L300 52L307 41M293 83L300 72L307 83" />
      <line className="tape-line" x1="300" y1="72" x2="300" y2="94" />
      <TapeValue x={316} y={28} anchor="start" text={subfloor} />
      <text className="picture-word" x="290" y="34" textAnchor="end">
        {say('measure.word.subfloor')}
      </text>
      <text className="picture-word" x="136" y="222">
        {say('measure.word.header')}
      </text>
    </>
  );
}

export function DepthPicture({ text }: { readonly text: string }) {
  const { say } = useWords();
  return (
    <>
      <rect className="role-house" x="136" y="66" width="254" height="108" />
      <rect className="role-house" x="136" y="50" width="254" height="16" />
      <rect className="role-house" x="136" y="174" width="254" height="10" />
      <line className="role-floor-today" x1="136" y1="50" x2="390" y2="50" />
      <rect className="role-to-come" x="136" y="40" width="254" height="10" />
      <line className="role-dimension" x1="92" y1="40" x2="130" y2="40" />
      <line className="role-dimension" x1="92" y1="184" x2="130" y2="184" />
      <Tape from={[112, 184]} to={[112, 40]} />
      <TapeValue x={96} y={112} anchor="end" text={text} />
      <text className="picture-word" x="388" y="30" textAnchor="end">
        {say('measure.word.upper')}
      </text>
      <text className="picture-word" x="388" y="208" textAnchor="end">
        {say('measure.word.ceiling')}
      </text>
    </>
  );
}

/** Out from the header to both ends, and up to the underside. */
export function OverheadPicture({ built }: { readonly built: boolean }) {
  const { say } = useWords();
  return (
    <>
      <ElevationScene built={built} />
      <rect className="role-house" x="150" y="64" width="34" height="20" />
      <line className="role-to-come" x1="184" y1="64" x2="184" y2="22" />
      <Tape from={[300, 30]} to={[184, 30]} />
      <text className="picture-word" x="242" y="20" textAnchor="middle">
        {say('measure.word.near')}
      </text>
      <Tape from={[96, 214]} to={[96, 84]} />
      <line className="role-to-come" x1="150" y1="84" x2="84" y2="84" />
      <text className="picture-word" x="84" y="150" textAnchor="end">
        {say('measure.word.height')}
      </text>
    </>
  );
}

const STRINGERS = [88, 190, 292];

export function WidthsPicture({ text }: { readonly text: string }) {
  const { say } = useWords();
  return (
    <>
      {[30, 340].map((x) => (
        <rect key={x} className="role-house" x={x} y="40" width="30" height="180" />
      ))}
      {[60, 332].map((x) => (
        <rect key={x} className="role-house" x={x} y="40" width="8" height="180" />
      ))}
      {[68, 324].map((x) => (
        <rect key={x} className="role-riser" x={x} y="96" width="8" height="124" />
      ))}
      {STRINGERS.map((x) => (
        <rect key={x} className="role-stringer" x={x} y="132" width="20" height="88" />
      ))}
      <rect className="role-tread" x="76" y="120" width="248" height="12" />
      <Tape from={[60, 62]} to={[340, 62]} />
      <TapeValue x={200} y={32} anchor="middle" text={text} />
      <text className="picture-word" x="250" y="184" textAnchor="middle">
        {say('measure.word.stringer')}
      </text>
    </>
  );
}
