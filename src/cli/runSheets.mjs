/** `npm run --silent sheets -- job.json --out FOLDER`: a job file in, its sheets and files out. */
import './checkNode.mjs';
import { launch } from './launch.mjs';

await launch('sheets');
