/** The form in the order of the job: which keys stand in which part, and what kind of field each needs. */
export type FieldKind =
  | 'feet-required'
  | 'feet'
  | 'length'
  | 'length-required'
  | 'finish'
  | 'risers'
  | 'stringers'
  | 'laid'
  | 'joint'
  | 'top'
  | 'kicker';

export interface FormPart {
  readonly name: 'tape' | 'opening' | 'width' | 'steps' | 'stringer';
  readonly fields: readonly (readonly [key: string, kind: FieldKind])[];
}

export const FORM_PARTS: readonly FormPart[] = [
  {
    name: 'tape',
    fields: [
      ['survey.rise', 'feet-required'],
      ['survey.footBelowReading', 'length'],
      ['survey.readingFromHeader', 'length'],
      ['survey.fallAlong', 'length'],
      ['survey.fallAlongOver', 'length'],
      ['survey.fallAcross', 'length'],
      ['survey.fallAcrossOver', 'length'],
      ['survey.lowerToAdd', 'finish'],
      ['survey.lowerLaid', 'laid'],
      ['survey.upperToAdd', 'finish'],
      ['survey.upperSubfloor', 'length'],
    ],
  },
  {
    name: 'opening',
    fields: [
      ['survey.openingFraming', 'feet'],
      ['survey.floorDepth', 'length'],
      ['survey.headerDepth', 'length'],
      ['survey.headerLining', 'length'],
    ],
  },
  {
    name: 'width',
    fields: [
      ['survey.widthFraming', 'feet'],
      ['survey.wallboard', 'length'],
      ['survey.skirt', 'length'],
      ['survey.spacer', 'length'],
    ],
  },
  {
    name: 'steps',
    fields: [
      ['steps.risers', 'risers'],
      ['steps.run', 'length'],
      ['steps.nosing', 'length'],
      ['steps.treadThickness', 'finish'],
      ['steps.riserThickness', 'length'],
      ['steps.joint', 'joint'],
      ['steps.upperNosingThickness', 'length'],
      ['steps.softCovering.lower', 'length'],
      ['steps.softCovering.treads', 'length'],
      ['steps.softCovering.upper', 'length'],
    ],
  },
  {
    name: 'stringer',
    fields: [
      ['stringer.top', 'top'],
      ['stringer.hanger', 'length'],
      ['stringer.topTreadRun', 'length'],
      ['stringer.stockDepth', 'length'],
      ['stringer.stockThickness', 'length'],
      ['stringer.tipInset', 'length'],
      ['stringer.trim', 'length'],
      ['stringer.kicker', 'kicker'],
      ['stringer.kicker.width', 'length-required'],
      ['stringer.kicker.height', 'length-required'],
      ['stringer.count', 'stringers'],
      ['stringer.spacingMax', 'length'],
    ],
  },
];
