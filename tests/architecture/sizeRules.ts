/** How long a file, a function and a component may grow before they have to be taken apart. */
import type { Exception } from './exceptions';
import type { SourceFacts } from './scan';

interface Measured {
  readonly path: string;
  readonly name?: string;
  readonly line: number;
  readonly lines: number;
  readonly limit: number;
  readonly kind: string;
}

const FILE_LIMIT = 400;
const FUNCTION_LIMIT = 80;
const COMPONENT_LIMIT = 150;

export function sizeFaults(sources: readonly SourceFacts[], exceptions: readonly Exception[]): string[] {
  const measured = sources.flatMap(measure);
  const tooLong = measured
    .filter((one) => one.lines > one.limit && !exceptions.some((exception) => isFor(exception, one)))
    .map(
      ({ path, name, line, lines, limit, kind }) =>
        `${path}:${line} ${name ?? 'The file'} has ${lines} lines; a ${kind} over ${limit} is no longer read whole: take it apart.`,
    );
  return [...tooLong, ...exceptions.flatMap((exception) => exceptionFaults(exception, measured))];
}

function measure(source: SourceFacts): Measured[] {
  const { path, lines, functions } = source;
  if (path.endsWith('.json')) return [];
  const parts = functions.map(({ name, line, lines: length, isComponent }) =>
    isComponent
      ? { path, name, line, lines: length, limit: COMPONENT_LIMIT, kind: 'component' }
      : { path, name, line, lines: length, limit: FUNCTION_LIMIT, kind: 'function' },
  );
  // A table of data is looked up, not read from end to end.
  const isData = path.startsWith('src/packs/');
  return isData ? parts : [{ path, line: 1, lines, limit: FILE_LIMIT, kind: 'file' }, ...parts];
}

function isFor(exception: Exception, one: Measured): boolean {
  return exception.path === one.path && exception.name === one.name;
}

function exceptionFaults(exception: Exception, measured: readonly Measured[]): string[] {
  const what = exception.name ? `${exception.path} ${exception.name}` : exception.path;
  const [found] = measured.filter((one) => isFor(exception, one)).sort((a, b) => b.lines - a.lines);
  if (!found || found.lines <= found.limit) return [`The exception for ${what} is no longer needed: remove it.`];
  if (exception.reason.trim() === '') return [`The exception for ${what} gives no reason.`];
  if (found.lines > exception.lines)
    return [`${what} grew from ${exception.lines} to ${found.lines} lines: it may only shrink.`];
  if (found.lines < exception.lines)
    return [`${what} fell to ${found.lines} lines: write that number in its exception.`];
  return [];
}
