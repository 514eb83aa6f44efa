/**
 * Imported before everything else, and written so that an old Node can still read it:
 * otherwise the first thing its user saw would be a syntax error.
 */
const LEAST = [20, 19];

const running = process.versions.node.split('.').map(Number);

if (running[0] < LEAST[0] || (running[0] === LEAST[0] && running[1] < LEAST[1])) {
  console.error(
    'Pitchboard needs Node ' +
      LEAST.join('.') +
      ' or newer; this is Node ' +
      process.versions.node +
      '. ' +
      'Install a newer Node, then run the same command again.',
  );
  process.exit(1);
}
