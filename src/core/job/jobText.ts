/**
 * The job as its author wrote it: every length is still the text that was typed, so that
 * nothing is lost by opening and saving. `document/` proves that a file has this shape;
 * `readStair` turns it into exact lengths. Key meanings: docs/job-file.md.
 */
import type { UnitSystem } from '../units/length';

export type KnownText = 'measured' | 'specified' | 'assumed';
export type FinishText = string | { readonly length: string; readonly known: KnownText };

export interface JobText {
  readonly format: 'pitchboard.job';
  readonly version: 1;
  readonly name?: string | undefined;
  readonly units?: UnitSystem | undefined;
  readonly markStep?: string | undefined;
  readonly tapeDoubt?: string | undefined;
  readonly rules?: RulesText | undefined;
  readonly stairs: readonly StairText[];
}

export interface RulesText {
  readonly pack?: string | undefined;
  readonly profile?: string | undefined;
  readonly local?: readonly LocalRuleText[] | undefined;
}

export interface LocalRuleText {
  readonly field: string;
  readonly value: string;
  readonly note?: string | undefined;
}

export interface StairText {
  readonly id: string;
  readonly name?: string | undefined;
  readonly survey: SurveyText;
  readonly steps?: StepsText | undefined;
  readonly stringer?: StringerText | undefined;
  readonly carry?: CarryText | undefined;
}

export interface SurveyText {
  readonly rise: string;
  readonly footBelowReading?: string | undefined;
  readonly readingFromHeader?: string | undefined;
  readonly fallAlong?: string | undefined;
  readonly fallAlongOver?: string | undefined;
  readonly fallAcross?: string | undefined;
  readonly fallAcrossOver?: string | undefined;
  readonly lowerToAdd?: FinishText | undefined;
  readonly lowerLaid?: LowerLaid | undefined;
  readonly upperToAdd?: FinishText | undefined;
  readonly upperSubfloor?: string | undefined;
  readonly headerDepth?: string | undefined;
  readonly floorDepth?: string | undefined;
  readonly obstacles?: readonly ObstacleText[] | undefined;
  readonly openingFraming?: string | undefined;
  readonly headerLining?: string | undefined;
  readonly widthFraming?: string | undefined;
  readonly wallboard?: string | undefined;
  readonly skirt?: string | undefined;
  readonly spacer?: string | undefined;
}

/** A beam, a duct, a sloping ceiling over the flight. */
export interface ObstacleText {
  readonly name?: string | undefined;
  readonly near: string;
  readonly far: string;
  readonly height: string;
  readonly heightFar?: string | undefined;
  readonly clearance?: string | undefined;
}

export interface StepsText {
  readonly risers?: number | 'auto' | undefined;
  readonly run?: string | undefined;
  readonly nosing?: string | undefined;
  readonly treadThickness?: FinishText | undefined;
  readonly riserThickness?: string | undefined;
  readonly joint?: TreadRiserJoint | undefined;
  readonly upperNosingThickness?: string | undefined;
  readonly softCovering?: SoftCoveringText | undefined;
}

export interface SoftCoveringText {
  readonly lower?: string | undefined;
  readonly treads?: string | undefined;
  readonly upper?: string | undefined;
}

export interface StringerText {
  readonly stockDepth?: string | undefined;
  readonly stockThickness?: string | undefined;
  readonly tipInset?: string | undefined;
  readonly trim?: string | undefined;
  readonly top?: StringerTop | undefined;
  readonly hanger?: string | undefined;
  readonly topTreadRun?: string | undefined;
  readonly kicker?: { readonly width: string; readonly height: string } | undefined;
  readonly count?: number | 'auto' | undefined;
  readonly spacingMax?: string | undefined;
}

/** What the screening of the stringer is told. It moves no cut: a job without it is laid out alike. */
export interface CarryText {
  /** A name of the lumber data, or any other: then nothing is claimed for it. */
  readonly species?: string | undefined;
  readonly grade?: string | undefined;
  readonly service?: Service | undefined;
  readonly treatment?: Treatment | undefined;
  readonly support?: Support | undefined;
  readonly duration?: LoadDuration | undefined;
  readonly live?: string | undefined;
  readonly point?: string | undefined;
  readonly dead?: string | undefined;
}

/** How wet the wood is in use; wet is over 19 % of its weight. */
export type Service = 'dry' | 'wet';

/** Small cuts along the faces that let a preservative in, and cost strength. */
export type Treatment = 'none' | 'incised';

/** Whether the outer stringers span by themselves or are nailed along walls. */
export type Support = 'free-standing' | 'along-walls';

/** What the live load is like: how long wood bears it. */
export type LoadDuration = 'permanent' | 'occupancy' | 'snow' | 'construction';

/** When the lower finish goes down: decides what the stringer stands on. */
export type LowerLaid = 'after-stairs' | 'before-stairs';

/** Riser behind the tread's back edge, down to the stringer; or riser standing on the tread. */
export type TreadRiserJoint = 'tread-butts-riser' | 'riser-on-tread';

/** How the top end meets the header. Three hang one riser below the floor, one carries a tread level with it. */
export type StringerTop = 'header-behind-riser' | 'hanger-is-riser' | 'hanger-behind-riser' | 'level-with-floor';
