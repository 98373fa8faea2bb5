import type { FontRef } from './lettering';

/** What a face is like, in the order faces are offered; `own` are the shop's own files. */
export const FONT_KINDS = ['own', 'block', 'slab', 'condensed', 'script', 'rounded', 'wideCoverage'] as const;
export type FontKind = (typeof FONT_KINDS)[number];

/** A font that new lettering can be set in. */
export type FontChoice = { readonly ref: FontRef; readonly kind: FontKind };

/** Fonts to choose from, and those that stand behind every one of them for letters it lacks. */
export type FontChoices = { readonly offered: readonly FontChoice[]; readonly behind: readonly FontRef[] };
