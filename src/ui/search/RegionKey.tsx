/** What the hatchings, edges and points of the picture mean: those that it shows. */
import { CLOSED, type Closed, kindsIn, type Region } from '../../core/search/region';
import { useWords } from '../stairOnShow';
import { pointers } from './pointers';

interface RegionKeyProps {
  readonly region: Region;
  readonly hasNow: boolean;
}

export function RegionKey({ region, hasNow }: RegionKeyProps) {
  const { say } = useWords();
  const cells = new Set(region.rows.flatMap(({ cells: row }) => row));
  const shown = CLOSED.filter((kind) => [...cells].some((cell) => kindsIn(cell).includes(kind)));
  return (
    <ul className="region-key" aria-hidden="true">
      {cells.has(0) && (
        <li>
          <svg aria-hidden="true" viewBox="0 0 44 26" width="44" height="26">
            <rect className="region-fits" x="2" y="3" width="40" height="20" />
          </svg>
          {say('search.key.fits')}
        </li>
      )}
      {shown.map((kind) => (
        <KeyLine key={kind} kind={kind} />
      ))}
      {hasNow && (
        <li>
          <svg aria-hidden="true" viewBox="0 0 26 26" width="26" height="26">
            <circle className="region-in-hand" cx="13" cy="13" r="6" />
          </svg>
          {say('search.key.inHand')}
        </li>
      )}
      <li>
        <svg aria-hidden="true" viewBox="0 0 20 42" width="20" height="42">
          <path className="region-looked-at" d={pointers(10, 6, 36)} />
        </svg>
        {say('search.key.lookedAt')}
      </li>
    </ul>
  );
}

function KeyLine({ kind }: { readonly kind: Closed }) {
  const { say } = useWords();
  return (
    <li>
      <svg aria-hidden="true" viewBox="0 0 44 26" width="44" height="26">
        <rect className="region-closed" x="0" y="3" width="36" height="20" />
        <rect className="region-hatch" x="0" y="3" width="36" height="20" fill={`url(#region-${kind})`} />
        <path className={`region-edge region-edge-${kind}`} d="M38 0V26" />
      </svg>
      {say(`search.key.${kind}`)}
    </li>
  );
}
