/**
 * Brings what is read only after the first look to the page, once that has shown. Outside of a build all texts are
 * there from the start, and nothing is left to bring; a build puts them in this module's place.
 */
import { addTexts } from './say';

addTexts({ us: {}, uk: {} });
