/** The packs that are fetched, and read, when a job asks for them; and who reads them, with the first. */
import { READY, REFUSED } from './ready';
import { makeShelf } from './shelf';

export const LATE_PACKS = makeShelf(
  READY,
  {
    'irc-2024': { base: 'irc-2021', load: () => import('./codes/irc-2024.json') },
    'irc-2018': { base: 'irc-2021', load: () => import('./codes/irc-2018.json') },
    'irc-2015': { base: 'irc-2021', load: () => import('./codes/irc-2015.json') },
    'ibc-2024': { base: 'ibc-2021', load: () => import('./codes/ibc-2024.json') },
    'ibc-2021': { load: () => import('./codes/ibc-2021.json') },
    'osha-1910.25': { load: () => import('./codes/osha-1910.25.json') },
    'osha-1926.1052': { load: () => import('./codes/osha-1926.1052.json') },
    'ada-2010': { load: () => import('./codes/ada-2010.json') },
    'adk-2013': { load: () => import('./codes/adk-2013.json') },
    'ncc-2022': { load: () => import('./codes/ncc-2022.json') },
    'as-1657': { load: () => import('./codes/as-1657.json') },
    'nbc-2020': { load: () => import('./codes/nbc-2020.json') },
    'nbc-2015': { base: 'nbc-2020', load: () => import('./codes/nbc-2015.json') },
    'nbc-2010': { base: 'nbc-2020', load: () => import('./codes/nbc-2010.json') },
    'din-18065': { load: () => import('./codes/din-18065.json') },
    'nz-d1as1': { load: () => import('./codes/nz-d1as1.json') },
  },
  REFUSED,
);
