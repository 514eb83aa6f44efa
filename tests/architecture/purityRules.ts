/** What may not be written in certain places, and why. */
import type { Found, SourceFacts } from './scan';

const IN_CORE = 'src/core/';
const EPSILON_PLACES = ['src/core/geometry/tolerance.ts', 'src/core/units/rounding.ts'];
/** No length, angle or count of a stair is as small as this; only a tolerance is. */
const SMALLEST_FIGURE = 1e-4;

/** An inch in millimetres, in centimetres, in metres, a foot in millimetres, and the exact fraction of an inch. */
const INCH_FIGURES: readonly (number | bigint)[] = [25.4, 2.54, 0.0254, 304.8, 127n];

const CODE_NAMES = /(^|[^a-z])(irc|ibc|osha|ada|adk|ncc|nbc|bcbc|obc|din|nzbc|nz|as.?1657|bs.?5395)(?![a-z])/i;

const CHANGING = ['Math.random', 'Date.now', 'new Date', 'performance.now'];

const DANGEROUS: Readonly<Record<string, string>> = {
  '.innerHTML': 'text of a job would be read as markup',
  '.outerHTML': 'text of a job would be read as markup',
  '.insertAdjacentHTML': 'text of a job would be read as markup',
  '.dangerouslySetInnerHTML': 'text of a job would be read as markup',
  'document.write': 'text of a job would be read as markup',
  'eval()': 'text would be run as a program',
  'new Function': 'text would be run as a program',
  'Function()': 'text would be run as a program',
  '.localStorage': 'it is small, slow and written in halves; drafts are kept by platform/drafts',
  '.sessionStorage': 'it is lost with the tab; drafts are kept by platform/drafts',
};

const STORES = ['localStorage', 'sessionStorage'];

const BROWSER_NAMES =
  /^(window|document|navigator|location|history|localStorage|sessionStorage|indexedDB|DOMParser|XMLSerializer|requestAnimationFrame|matchMedia|getComputedStyle|(HTML|SVG)\w*Element|Element|Node)$/;

/** Everything in one file that does not belong there. */
export function purityFaults(source: SourceFacts): string[] {
  return [
    ...coreFaults(source),
    ...dangerFaults(source),
    ...(source.path.startsWith('src/export/') ? browserFaults(source) : []),
  ];
}

function coreFaults(source: SourceFacts): string[] {
  if (!source.path.startsWith(IN_CORE)) return [];
  const at = placeIn(source);
  const changing = source.reached
    .filter(({ value }) => CHANGING.includes(value))
    .map((one) => `${at(one)} uses ${one.value}, but the same job must give the same stair at any time.`);
  const named = source.texts
    .filter(({ value }) => CODE_NAMES.test(value))
    .map((one) => `${at(one)} names a code ("${one.value}"), but the core judges any rule and knows no jurisdiction.`);
  const epsilons = EPSILON_PLACES.includes(source.path) ? [] : source.numbers.filter(isTiny);
  const tolerant = epsilons.map(
    (one) =>
      `${at(one)} holds a tolerance (${one.value}), which only ${EPSILON_PLACES.join(' and ')} may: two of them would disagree.`,
  );
  return [...changing, ...named, ...tolerant];
}

function isTiny({ value }: Found<number | bigint>): boolean {
  return typeof value === 'number' && value > 0 && value < SMALLEST_FIGURE;
}

function dangerFaults(source: SourceFacts): string[] {
  const at = placeIn(source);
  const reached = source.reached
    .filter(({ value }) => Object.hasOwn(DANGEROUS, value))
    .map((one) => `${at(one)} uses ${one.value}: ${DANGEROUS[one.value]}.`);
  const stores = source.globals
    .filter(({ value }) => STORES.includes(value))
    .map((one) => `${at(one)} uses ${one.value}: ${DANGEROUS[`.${one.value}`]}.`);
  return [...reached, ...stores];
}

function browserFaults(source: SourceFacts): string[] {
  const at = placeIn(source);
  return source.globals
    .filter(({ value }) => BROWSER_NAMES.test(value))
    .map((one) => `${at(one)} uses ${one.value}, but a file must be written in a worker and on the command line too.`);
}

/** The length of an inch is written once: a second copy is one that can be wrong. */
export function inchFaults(sources: readonly SourceFacts[]): string[] {
  const places = sources.flatMap((source) =>
    source.numbers.filter(({ value }) => INCH_FIGURES.includes(value)).map((one) => ({ source, one })),
  );
  const files = new Set(places.map(({ source }) => source.path));
  if (files.size === 1) return [];
  if (files.size === 0) return ['The length of an inch is written nowhere: this rule has nothing to watch.'];
  return places.map(
    ({ source, one }) =>
      `${placeIn(source)(one)} writes the length of an inch (${one.value}), which belongs in one file of src/core/units.`,
  );
}

function placeIn(source: SourceFacts): (one: Found<unknown>) => string {
  return ({ line }) => `${source.path}:${line}`;
}
