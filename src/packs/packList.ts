/** What a page offers before any pack is loaded: names and profiles, the same as the packs' own. */
export interface PackName {
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly profiles: readonly string[];
}

const name = (id: string, title: string, edition: string, ...profiles: string[]): PackName => ({
  id,
  title,
  edition,
  profiles,
});

/** In the order in which they are offered: by country, newest first. */
export const PACK_LIST: readonly PackName[] = [
  name('irc-2021', 'International Residential Code', '2021'),
  name('irc-2024', 'International Residential Code', '2024'),
  name('irc-2018', 'International Residential Code', '2018'),
  name('irc-2015', 'International Residential Code', '2015'),
  name('ibc-2024', 'International Building Code', '2024', 'general', 'dwelling'),
  name('ibc-2021', 'International Building Code', '2021', 'general', 'dwelling'),
  name('osha-1910.25', 'OSHA stairs in general industry', '29 CFR 1910.25, rule of 2016'),
  name('osha-1926.1052', 'OSHA stairs in construction', '29 CFR 1926.1052'),
  name('ada-2010', 'ADA Standards for Accessible Design', '2010'),
  name('adk-2013', 'Approved Document K', '2013', 'private', 'utility', 'general'),
  name('ncc-2022', 'National Construction Code, Housing Provisions', '2022'),
  name('as-1657', 'AS 1657, industrial stairs', '2018'),
  name('nbc-2020', 'National Building Code of Canada', '2020', 'private', 'public'),
  name('nbc-2015', 'National Building Code of Canada', '2015', 'private', 'public'),
  name('nbc-2010', 'National Building Code of Canada', '2010', 'private', 'public'),
  name('din-18065', 'DIN 18065', '2020-08', 'private', 'general'),
  name(
    'nz-d1as1',
    'New Zealand D1/AS1',
    'second edition, amendment 6',
    'mainPrivate',
    'secondaryPrivate',
    'minorPrivate',
    'accessible',
  ),
];
