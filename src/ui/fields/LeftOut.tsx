/** Under an empty field: what is used in its place, so that nothing is assumed in silence. */
import { isTextKey } from '../../text/say';
import { useStair } from '../stairOnShow';
import { keyOfPlace } from './jobPlaces';

export function LeftOut({ place, required = false }: { readonly place: string; readonly required?: boolean }) {
  const { say, plan } = useStair();
  if (required) return null;
  const key = keyOfPlace(place);
  const ownWords = `left.${key}`;
  if (isTextKey(ownWords)) return <>{say(ownWords)}</>;
  const used = plan.ok ? plan.value.defaults.find((one) => one.key === key)?.used : undefined;
  return <>{used === undefined ? say('left.none') : say('left.used', { used })}</>;
}
