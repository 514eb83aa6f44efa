/** Which rules the stair is checked by. All but the usual ones are fetched when they are chosen. */
import { useState } from 'react';
import type { JobText } from '../../core/job/jobText';
import { PACK_LIST } from '../../packs/packList';
import { DEFAULT_PACK, loadPack } from '../../packs/ruleBook';
import { isTextKey } from '../../text/say';
import { type Choice, ChoiceField } from '../fields/ChoiceField';
import { FieldFrame } from '../fields/FieldFrame';
import { withValue } from '../fields/jobPlaces';
import { textOf } from '../fields/makings';
import { useField } from '../fields/useField';
import { useStair } from '../stairOnShow';

export function PackField() {
  const { say, job } = useStair();
  const [trip, setTrip] = useState<'none' | 'loading' | 'notFetched'>('none');
  const field = useField({
    place: 'rules.pack',
    show: (value) => ({ text: textOf(value, DEFAULT_PACK) }),
    make: ({ text }) => ({ ok: true, value: text }),
    also: withFittingProfile,
  });
  // A job is only laid out by rules that are here: they are fetched first, and then chosen.
  async function choose(id: string): Promise<void> {
    setTrip('loading');
    try {
      await loadPack(id);
      setTrip('none');
      field.change({ text: id });
    } catch {
      setTrip('notFetched');
    }
  }
  const choices: Choice[] = PACK_LIST.map(({ id, title, edition }) => ({ value: id, words: `${title}, ${edition}` }));
  const asked = job.rules?.pack ?? DEFAULT_PACK;
  if (!choices.some(({ value }) => value === asked)) {
    choices.push({ value: asked, words: say('choice.rules.pack.other', { pack: asked }) });
  }
  return (
    <FieldFrame place="rules.pack" field={field} wide note={trip === 'none' ? undefined : say(`pack.${trip}`)}>
      {(described) => (
        <select
          {...described}
          value={field.typed.text}
          onChange={(event) => void choose(event.currentTarget.value)}
          onBlur={field.leave}
        >
          {choices.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}

export function ProfileField() {
  const { say, job, plan } = useStair();
  const asked = job.rules?.pack ?? DEFAULT_PACK;
  const profiles = PACK_LIST.find(({ id }) => id === asked)?.profiles ?? [];
  const [first] = profiles;
  if (first === undefined) return null;
  const inForce = plan.ok ? plan.value.rules.profile : null;
  const choices = profiles.map((value) => {
    const key = `profile.${value}`;
    return { value, words: isTextKey(key) ? say(key) : value };
  });
  return <ChoiceField place="rules.profile" usual={inForce ?? first} choices={choices} />;
}

/** A kind of building that the chosen rules do not tell apart is left out with them. */
function withFittingProfile(job: JobText): JobText {
  const profiles = PACK_LIST.find(({ id }) => id === (job.rules?.pack ?? DEFAULT_PACK))?.profiles ?? [];
  const profile = job.rules?.profile;
  return profile === undefined || profiles.includes(profile) ? job : withValue(job, 'rules.profile', undefined);
}
