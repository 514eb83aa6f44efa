/** `npm run --silent layout -- job.json`: a job file in, its layouts out as JSON. */
import './checkNode.mjs';
import { launch } from './launch.mjs';

await launch('layout');
