/**
 * What the user decided for one stair, read and complete: exact lengths, defaults filled in
 * and listed, what nobody knows yet marked as such.
 */
import type { Exact } from '../units/exact';
import type { UnitSystem } from '../units/length';
import type {
  KnownText,
  LoadDuration,
  LowerLaid,
  Service,
  StringerTop,
  Support,
  TreadRiserJoint,
  Treatment,
} from './jobText';

/** A hard finish and how sure it is. An unknown one still has the amount it is laid out with. */
export interface Finish {
  readonly amount: Exact;
  readonly known: KnownText | 'unknown';
}

/** A key that was left out and the text of what was used for it. */
export interface DefaultUsed {
  readonly key: string;
  readonly used: string;
}

/**
 * How much lower a floor gets over a length. Along: away from the header. Across: to the right when
 * climbing. Negative where it rises that way.
 */
export interface Fall {
  readonly fall: Exact;
  readonly over: Exact;
}

/** Something overhead: level distances out from the header's face, heights over the lower floor of today. */
export interface Obstacle {
  /** Empty where it has none. */
  readonly name: string;
  /** Its end towards the header, and its end away from it. */
  readonly near: Exact;
  readonly far: Exact;
  /** Of its underside at the near end, and at the far one. */
  readonly height: Exact;
  readonly heightFar: Exact;
  /** Its own; null: what the rules ask of headroom. */
  readonly clearance: Exact | null;
}

export interface Survey {
  readonly rise: Exact;
  readonly footBelowReading: Exact;
  /** How far out from the header's face the tape stood; null: where the flight lands. */
  readonly readingFromHeader: Exact | null;
  readonly fallAlong: Fall;
  readonly fallAcross: Fall;
  readonly lowerToAdd: Finish;
  readonly lowerLaid: LowerLaid;
  readonly upperToAdd: Finish;
  readonly upperSubfloor: Exact;
  readonly headerDepth: Exact | null;
  readonly floorDepth: Exact | null;
  readonly obstacles: readonly Obstacle[];
  readonly openingFraming: Exact | null;
  readonly headerLining: Exact;
  readonly widthFraming: Exact | null;
  readonly wallboard: Exact;
  readonly skirt: Exact;
  readonly spacer: Exact;
}

export interface Steps {
  readonly risers: number | 'auto';
  /** Null: the least that the rules allow. */
  readonly run: Exact | null;
  readonly nosing: Exact;
  readonly treadThickness: Finish;
  /** Zero means open risers. */
  readonly riserThickness: Exact;
  readonly joint: TreadRiserJoint;
  readonly upperNosingThickness: Exact;
}

export interface StringerChoice {
  readonly stockDepth: Exact;
  readonly stockThickness: Exact;
  readonly tipInset: Exact;
  readonly trim: Exact;
  readonly top: StringerTop;
  readonly hanger: Exact;
  /** Level with the floor only; null: the run. */
  readonly topTreadRun: Exact | null;
  readonly kicker: { readonly width: Exact; readonly height: Exact } | null;
  readonly count: number | 'auto';
  readonly spacingMax: Exact;
}

/** What the screening was told; null: not said, and the screening says what it takes instead, or claims nothing. */
export interface CarryChoice {
  readonly species: string | null;
  readonly grade: string | null;
  readonly service: Service | null;
  readonly treatment: Treatment | null;
  readonly support: Support | null;
  readonly duration: LoadDuration | null;
  /** Kilopascals, newtons, kilopascals. */
  readonly live: number | null;
  readonly point: number | null;
  readonly dead: number | null;
}

export interface StairJob {
  readonly id: string;
  readonly name: string;
  /** `stairs[0]`: where a problem with this stair is said to be. */
  readonly place: string;
  readonly units: UnitSystem;
  readonly markStep: Exact;
  /** How far a tape reading may be out; null: what is usual. */
  readonly tapeDoubt: Exact | null;
  readonly survey: Survey;
  readonly steps: Steps;
  readonly stringer: StringerChoice;
  readonly carry: CarryChoice;
  readonly unknowns: readonly string[];
  readonly defaults: readonly DefaultUsed[];
}

/** True where the stringer stops one riser below the floor. */
export function isHung(top: StringerTop): boolean {
  return top !== 'level-with-floor';
}

/** True where a hanger board stands between the stringer's end and the header. */
export function hasHangerBoard(top: StringerTop): boolean {
  return top === 'hanger-is-riser' || top === 'hanger-behind-riser';
}
