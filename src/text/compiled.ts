/**
 * The catalogues with their values and plurals parsed. Here it happens when the program starts; a
 * build of the page does it beforehand and puts the outcome in this module's place (vite.config.ts),
 * so that the page carries no parser of messages, and of the texts only those of its own group.
 */
import { compileMessage } from '@lingui/message-utils/compileMessage';
import { CATALOGUES, type Terms, type TextKey } from './catalogues';

export type CompiledText = ReturnType<typeof compileMessage>;
export type CompiledCatalogue = Readonly<Partial<Record<TextKey, CompiledText>>>;

export const COMPILED: Readonly<Record<Terms, CompiledCatalogue>> = {
  us: compileCatalogue('us'),
  uk: compileCatalogue('uk'),
};

function compileCatalogue(terms: Terms): CompiledCatalogue {
  const entries = Object.entries(CATALOGUES[terms]);
  return Object.fromEntries(entries.map(([key, text]) => [key, compileMessage(text)]));
}
