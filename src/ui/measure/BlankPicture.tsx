/** Keeps the room of a picture until it comes, so that nothing below it moves. */
import type { ThingName } from './things';

interface BlankPictureProps {
  readonly kind: 'tape-picture' | 'stair-guess';
  readonly viewBox: string;
}

export function BlankPicture({ kind, viewBox }: BlankPictureProps) {
  return <svg className={`drawing ${kind}`} aria-hidden="true" viewBox={viewBox} />;
}

export const STAIR_FRAME = '0 0 400 236';

/** What a picture of a thing shows, in its own units. */
export function frameOf(thing: ThingName): string {
  return thing === 'landing' ? '0 0 400 170' : STAIR_FRAME;
}
