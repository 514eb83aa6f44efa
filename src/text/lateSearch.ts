/**
 * Brings what is said of all layouts to the page, with the part of it that needs it. Outside of a build all texts are
 * there from the start, and nothing is left to bring; a build puts them in this module's place.
 */
import { addTexts } from './say';

addTexts({ us: {}, uk: {} });
