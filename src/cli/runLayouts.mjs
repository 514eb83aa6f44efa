/** `npm run --silent layouts -- job.json`: a job file in, every layout that it allows out as JSON. */
import './checkNode.mjs';
import { launch } from './launch.mjs';

await launch('layouts');
