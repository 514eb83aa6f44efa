/** Brings who reads local rules: a part of the page that may have any imports this, and a job that has some asks for it. */
import { LOCAL_READER } from '../core/codes/rulePack';
import { bringLocals } from './stairOnShow';

bringLocals(LOCAL_READER);
