import { createContext, useContext } from 'react';
import type { FontChoices } from '@/lib/domain/lettering/font-choice';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { WithFont } from './use-lettering-type';

/** What lettering on a slip is set with. */
export type LetteringTools = {
  readonly fonts: FontChoices;
  readonly withFont: WithFont;
  /** A font that could not be opened when it was asked for. */
  readonly failedFont: FontRef | null;
  /** A font that is on its way. */
  readonly openingFont: FontRef | null;
};

const Tools = createContext<LetteringTools | null>(null);

/** Hands the fonts to every slip. */
export const LetteringToolsProvider = Tools.Provider;

/** The fonts at hand. Throws outside a table. */
export function useLetteringTools(): LetteringTools {
  const tools = useContext(Tools);
  if (!tools) throw new Error('lettering tools are used outside a table');
  return tools;
}
