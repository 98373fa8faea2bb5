import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ViewGarment, ViewSide } from '@/lib/domain/revision/view';
import type { ViewFit } from '@/lib/domain/revision/view-fit';
import type { Locale } from '@/lib/messages/locales';
import { sizeWords } from '@/lib/messages/reading-words';
import { type Translator, translatorFor } from '@/lib/messages/translator';
import { unbroken } from './unbroken';

type ShownPrint = ViewSide['prints'][number];
/** A print on each of its sizes; `at` is where the size stands among those of the garment. */
export type PrintOnSizes = readonly {
  readonly at: number;
  readonly size: ViewGarment['sizes'][number];
  readonly print: ShownPrint;
}[];

/** What a print does that is usually a mistake, on which sizes, and why the maker means it so. */
export type MeantWords = { readonly facts: readonly string[]; readonly says: string };

/** How near a print comes to a seam, a row for sizes of which the same is said. */
export type SeamsWords = {
  readonly summary: string;
  readonly rows: readonly { readonly of: string; readonly sizes: string; readonly near: string }[];
};

/** Why a print is meant to cross a seam or to leave the garment; null for one that does neither. */
export function meantWords(locale: Locale, on: PrintOnSizes, allSizes: number): MeantWords | null {
  const note = on.find(({ print }) => print.fitNote)?.print.fitNote;
  if (!note) return null;
  const t = translatorFor(locale, 'proof');
  const readings = translatorFor(locale, 'readings');
  const list = new Intl.ListFormat(locale);
  const stops = grouped(on, ({ fit }) =>
    (fit?.stops ?? []).map(({ kind, line }) => t(`meant.kind.${kind}`, { line: line ?? 'none' })),
  );
  return {
    facts: sameSizes(stops).map(({ words, sizes }) =>
      sizes.length === allSizes
        ? t('meant.onAll', { what: list.format(words) })
        : t('meant.on', {
            what: list.format(words),
            sizes: list.format(sizes.map(({ size }) => sizeWords(readings, size))),
          }),
    ),
    says: t('meant.says', { note }),
  };
}

/** How near a print comes to a seam on each size, as it was kept when it was sent; null where it was not kept. */
export function seamsWords(locale: Locale, unit: LengthUnit, on: PrintOnSizes, allSizes: number): SeamsWords | null {
  if (on.some(({ print }) => !print.fit)) return null;
  const t = translatorFor(locale, 'proof');
  const readings = translatorFor(locale, 'readings');
  return {
    summary: t('seams.summary'),
    rows: grouped(on, ({ fit }) => [nearWords(t, fit?.nearest ?? null, unit)]).map(({ words, sizes }) => ({
      of: sizes.map(({ at }) => at).join(' '),
      sizes: sizes.length === allSizes ? t('allSizes') : sizes.map(({ size }) => sizeWords(readings, size)).join(', '),
      near: unbroken(words),
    })),
  };
}

function nearWords(t: Translator<'proof'>, nearest: ViewFit['nearest'], unit: LengthUnit): string {
  if (!nearest) return t('seams.none');
  const { line, um } = nearest;
  return um === 0 ? t('seams.over', { line }) : t('seams.near', { length: formatLength(um, unit), line });
}

type Said = { readonly words: string; readonly sizes: PrintOnSizes };

/** What is said of the same sizes taken together. */
function sameSizes(said: readonly Said[]): { words: string[]; sizes: PrintOnSizes }[] {
  const groups = new Map<string, { words: string[]; sizes: PrintOnSizes }>();
  for (const { words, sizes } of said) {
    const key = sizes.map(({ at }) => at).join(' ');
    const group = groups.get(key) ?? { words: [], sizes };
    group.words.push(words);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** The words said of each print, each once, with the sizes they are said of. */
function grouped(on: PrintOnSizes, wordsOf: (print: ShownPrint) => readonly string[]): Said[] {
  const groups = new Map<string, PrintOnSizes[number][]>();
  for (const each of on) {
    for (const words of wordsOf(each.print)) groups.set(words, [...(groups.get(words) ?? []), each]);
  }
  return [...groups].map(([words, sizes]) => ({ words, sizes }));
}
