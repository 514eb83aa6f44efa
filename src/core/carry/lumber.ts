/**
 * What the screening knows of wood, loads and other people's figures: types only. The data lies in
 * src/packs/lumber, read by a schema that refuses a row without source. Figures are in the units of their
 * documents: psi, psf, lbf, inches; a row of another unit says so.
 */
import type { Confidence } from '../codes/rules';
import type { LoadDuration, Support } from '../job/jobText';

/** Whose word a figure is, and how sure it is. */
export interface Sourced {
  readonly confidence: Confidence;
  /** In words, the first one first. */
  readonly sources: readonly string[];
}

/** Reference design values of one species and grade, in psi. */
export interface WoodValues extends Sourced {
  readonly species: string;
  readonly grades: readonly string[];
  /** Only for this nominal depth, whose size effect is in the values already; left out: for every depth. */
  readonly nominal?: number | undefined;
  readonly bending: number;
  readonly shear: number;
  /** Square to the grain. */
  readonly bearing: number;
  readonly stiffness: number;
}

/** A dressed depth, in inches, by its name in the yard. */
export interface DressedSize extends Sourced {
  readonly nominal: number;
  readonly depth: number;
}

export interface SizeFactor extends Sourced {
  readonly nominal: number;
  readonly factor: number;
}

export type WoodProperty = 'bending' | 'shear' | 'bearing' | 'stiffness';

export interface PropertyFactor extends Sourced {
  readonly on: WoodProperty;
  readonly factor: number;
  /** Values up to this, in psi and with their size factor, are not lowered. */
  readonly freeUpTo?: number | undefined;
}

export interface DurationFactor extends Sourced {
  readonly name: LoadDuration;
  readonly factor: number;
}

/** Members side by side that share a load: how many at the least, and how far apart at the most, in inches. */
export interface RepetitiveFactor extends Sourced {
  readonly factor: number;
  readonly least: number;
  readonly spacing: number;
}

export type LoadName = 'live' | 'point' | 'dead';

export interface UsualLoad extends Sourced {
  readonly what: LoadName;
  readonly value: number;
  readonly unit: 'psf' | 'lbf';
}

/** Deflection is held to a part of the span: 360 for L/360. */
export interface DeflectionLimit extends Sourced {
  readonly what: 'live' | 'total';
  readonly part: number;
}

export type PublishedThing = 'throat' | 'depth' | 'thickness' | 'span' | 'spacing' | 'count';

/** A figure that somebody has printed for cut stringers, with what it is for. */
export interface PublishedFigure extends Sourced {
  readonly what: PublishedThing;
  readonly sense: 'least' | 'most';
  readonly value: number;
  readonly unit: 'in' | 'mm' | 'count';
  readonly whose: string;
  /** Only for stringers held so. */
  readonly support?: Support | undefined;
  /** Only for stairs that are wider. */
  readonly widerThan?: { readonly value: number; readonly unit: 'in' | 'mm' } | undefined;
  /** Only for stairs with riser boards. */
  readonly risers?: 'closed' | undefined;
}

export interface LumberBook {
  readonly values: readonly WoodValues[];
  readonly sizes: readonly DressedSize[];
  readonly sizeFactors: readonly SizeFactor[];
  readonly wet: readonly PropertyFactor[];
  readonly incised: readonly PropertyFactor[];
  readonly duration: readonly DurationFactor[];
  readonly repetitive: RepetitiveFactor;
  /** Thicknesses, in inches, that the values and factors are for. */
  readonly thickness: Sourced & { readonly least: number; readonly most: number };
  readonly loads: readonly UsualLoad[];
  readonly deflection: readonly DeflectionLimit[];
  readonly published: readonly PublishedFigure[];
}
