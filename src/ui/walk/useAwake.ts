import { useEffect, useState } from 'react';
import { type Awake, keepAwake } from '../../platform/awake';

/** The screen stays awake for as long as the part that asks for it is shown. */
export function useAwake(): Awake {
  const [awake, setAwake] = useState<Awake>('asking');
  useEffect(() => keepAwake(setAwake), []);
  return awake;
}
