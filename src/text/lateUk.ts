/**
 * Brings the words of the UK trade for what comes with the page. Outside of a build all texts are
 * there from the start, and nothing is left to bring; a build puts them in this module's place.
 */
import { addTexts } from './say';

addTexts({ us: {}, uk: {} });
