/**
 * `npm test`: every layer, cheapest first, and on after a failed one, so that one run shows all
 * faults. With names of layers it runs those only: `node tests/run/all.mjs types unit`.
 */
import '../../src/cli/checkNode.mjs';
import { ensureInstalled, InstallError } from '../../src/cli/install.mjs';
import { lastLine, outcome, sum } from './counting.mjs';

try {
  ensureInstalled();
} catch (error) {
  console.error(error instanceof InstallError ? error.message : error);
  console.log(lastLine(outcome(0, 1)));
  process.exit(1);
}

// Only now: the layers lean on what is installed.
const { LAYERS } = await import('./layers.mjs');
const total = sum(await runAll(chosenLayers(process.argv.slice(2))));
console.log(`\n${lastLine(total)}`);
process.exitCode = total.failed > 0 ? 1 : 0;

function chosenLayers(keys) {
  const unknown = keys.filter((key) => !LAYERS.some((layer) => layer.key === key));
  if (unknown.length === 0) return keys.length === 0 ? LAYERS : LAYERS.filter((layer) => keys.includes(layer.key));
  console.error(`There is no layer ${unknown.join(', ')}. There are: ${LAYERS.map((layer) => layer.key).join(', ')}.`);
  process.exit(1);
}

async function runAll(layers) {
  const outcomes = [];
  for (const layer of layers) outcomes.push(await runLayer(layer));
  return outcomes;
}

async function runLayer(layer) {
  console.log(`\n== ${layer.heading}`);
  const begun = performance.now();
  const { parts, output } = await layer.run().catch(broken);
  const counted = sum(parts);
  if (counted.failed > 0) console.log(output.trimEnd());
  for (const fault of parts.flatMap((part) => part.faults)) console.log(`!! ${fault}`);
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(`   ${counted.passed} passed, ${counted.failed} failed${skipped(counted)} in ${seconds} s`);
  return counted;
}

function skipped(counted) {
  return counted.skipped > 0 ? `, ${counted.skipped} skipped` : '';
}

function broken(error) {
  return { parts: [outcome(0, 1, 0, [`The layer itself broke: ${error.stack}`])], output: '' };
}
