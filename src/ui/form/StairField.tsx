/** One key of one stair as the field that its kind needs. */
import { memo } from 'react';
import type { JobText, StairText, StringerText, StringerTop, SurveyText } from '../../core/job/jobText';
import type { StairLayout } from '../../core/layout/layoutStair';
import { ChoiceField } from '../fields/ChoiceField';
import { CountField } from '../fields/CountField';
import { FinishField } from '../fields/FinishField';
import { placeInStair, withValue } from '../fields/jobPlaces';
import { LengthField } from '../fields/LengthField';
import { unitsOf, useStair, useWords } from '../stairOnShow';
import type { FieldKind } from './formParts';

const LAID = ['after-stairs', 'before-stairs'] as const;
const JOINTS = ['tread-butts-riser', 'riser-on-tread'] as const;
const TOPS = ['hanger-is-riser', 'hanger-behind-riser', 'header-behind-riser', 'level-with-floor'] as const;
const FEWEST = 2;

/** A board on the flat, as framed houses have it lying about; only where someone turns the notch on. */
const USUAL_KICKER = {
  imperial: { width: '3 1/2 in', height: '1 1/2 in' },
  metric: { width: '90 mm', height: '45 mm' },
};

interface StairFieldProps {
  readonly fieldKey: string;
  readonly kind: FieldKind;
}

/** What is typed in another field concerns it only where it shows what is counted. */
export const StairField = memo(function StairField({ fieldKey, kind }: StairFieldProps) {
  const { say, index } = useWords();
  const place = placeInStair(index, fieldKey);
  switch (kind) {
    case 'feet-required':
      return <LengthField place={place} feet required />;
    case 'feet':
      return <LengthField place={place} feet />;
    case 'length':
      return <LengthField place={place} />;
    case 'length-required':
      return <LengthField place={place} required />;
    case 'finish':
      return <FinishField place={place} />;
    case 'risers':
      return <Counted place={place} count={({ flight }) => flight.risers} />;
    case 'stringers':
      return <Counted place={place} count={({ width }) => width?.stringers ?? null} />;
    case 'laid':
      return (
        <ChoiceField
          place={place}
          usual={LAID[0]}
          choices={LAID.map((value) => ({ value, words: say(`choice.survey.lowerLaid.${value}`) }))}
        />
      );
    case 'joint':
      return (
        <ChoiceField
          place={place}
          usual={JOINTS[0]}
          choices={JOINTS.map((value) => ({ value, words: say(`choice.steps.joint.${value}`) }))}
        />
      );
    case 'top':
      return (
        <ChoiceField
          place={place}
          usual={TOPS[0]}
          choices={TOPS.map((value) => ({ value, words: say(`choice.stringer.top.${value}`) }))}
          also={(job) => withoutForeignKeys(job, index)}
        />
      );
    case 'kicker':
      return <KickerField place={place} />;
  }
});

interface CountedProps {
  readonly place: string;
  readonly count: (layout: StairLayout) => number | null;
}

function Counted({ place, count }: CountedProps) {
  const { plan } = useStair();
  return <CountField place={place} least={FEWEST} counted={plan.ok ? count(plan.value.layout) : null} />;
}

function KickerField({ place }: { readonly place: string }) {
  const { say } = useWords();
  return (
    <ChoiceField
      place={place}
      usual="none"
      choices={(['none', 'notched'] as const).map((value) => ({
        value,
        words: say(`choice.stringer.kicker.${value}`),
      }))}
      toChosen={(value) => (value === undefined ? 'none' : 'notched')}
      toValue={(chosen, job) => (chosen === 'none' ? undefined : USUAL_KICKER[unitsOf(job)])}
    />
  );
}

/** A top leaves no keys behind that only another top may have. */
function withoutForeignKeys(job: JobText, index: number): JobText {
  const stringer: StringerText = job.stairs[index]?.stringer ?? {};
  const top: StringerTop = stringer.top ?? TOPS[0];
  const foreign = [
    ...(top === 'header-behind-riser' && stringer.hanger !== undefined ? ['stringer.hanger'] : []),
    ...(top !== 'level-with-floor' && stringer.topTreadRun !== undefined ? ['stringer.topTreadRun'] : []),
  ];
  return foreign.reduce((kept, key) => withValue(kept, placeInStair(index, key), undefined), job);
}

/** What a fall is read over, or where the tape stood on it, is only asked where there is one. */
const OVER: Readonly<Record<string, 'fallAlong' | 'fallAcross'>> = {
  'survey.readingFromHeader': 'fallAlong',
  'survey.fallAlongOver': 'fallAlong',
  'survey.fallAcrossOver': 'fallAcross',
};

/** Fields that the other choices leave without a meaning are not asked for. */
export function isAsked(stair: StairText | undefined, key: string): boolean {
  const { survey, stringer } = stair ?? {};
  const over = OVER[key];
  if (over !== undefined)
    return survey?.[over] !== undefined || survey?.[key.slice('survey.'.length) as keyof SurveyText] !== undefined;
  const top = stringer?.top ?? TOPS[0];
  if (key === 'stringer.hanger') return top !== 'header-behind-riser' || stringer?.hanger !== undefined;
  if (key === 'stringer.topTreadRun') return top === 'level-with-floor' || stringer?.topTreadRun !== undefined;
  if (key.startsWith('stringer.kicker.')) return stringer?.kicker !== undefined;
  return true;
}
