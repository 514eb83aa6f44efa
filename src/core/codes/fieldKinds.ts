/**
 * What kind of figure each field holds that the program can judge, so that a local rule for it is
 * read as that and nothing else, whether or not the pack has a row for it.
 */
export type FieldKind = 'length' | 'angle' | 'count' | 'yesNo';

const OF_KIND: Readonly<Record<FieldKind, readonly string[]>> = {
  length: [
    'riser.max',
    'riser.min',
    'tread.min',
    'tread.max',
    'tread.overRun.max',
    'twoRPlusG.min',
    'twoRPlusG.max',
    'nosing.min',
    'nosing.max',
    'nosing.notRequiredFromTread',
    'openRiser.maxSphere',
    'openRiser.freeBelowHeight',
    'openRiser.overlap.min',
    'variation.riser.max',
    'variation.riser.adjacent.max',
    'variation.riser.nominal.max',
    'variation.tread.max',
    'variation.tread.adjacent.max',
    'variation.tread.nominal.max',
    'variation.nosing.max',
    'headroom.min',
    'width.min',
    'flight.maxVerticalRise',
    'handrail.requiredAboveRise',
    'handrail.bothSidesFromWidth',
    'guard.requiredAboveDrop',
    'stringer.effectiveDepth.min',
    'stringer.depth.min',
    'stringer.thickness.min',
    'stringer.spacing.max',
    'treadBoard.thickness.min',
  ],
  angle: ['pitch.min', 'pitch.max', 'riser.slope.max'],
  count: ['flight.minRisers', 'flight.maxRisers', 'flight.maxRisersBeforeTurn', 'handrail.requiredFromRisers'],
  yesNo: ['openRiser.allowed'],
};

const KINDS = new Map<string, FieldKind>(
  (Object.keys(OF_KIND) as FieldKind[]).flatMap((kind) => OF_KIND[kind].map((field) => [field, kind] as const)),
);

export function kindOf(field: string): FieldKind | undefined {
  return KINDS.get(field);
}

/** Every field that has an answer of its own or lends its figure to one. */
export function knownFields(): readonly string[] {
  return [...KINDS.keys()];
}

/** @returns the field that sets the most where this one sets the least, or null */
export function mostOf(field: string): string | null {
  if (field.endsWith('.min')) return `${field.slice(0, -'min'.length)}max`;
  return field === 'flight.minRisers' ? 'flight.maxRisers' : null;
}
