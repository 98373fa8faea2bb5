import type { Translator } from '@/lib/messages/translator';
import type { SelectGroup } from '../ui/select-field';
import { type OfferedStyle, STYLE_SHELVES } from './offered-style';

/** The styles to choose from: the shop's own blanks first, then the starter charts by what they are for. */
export function styleOptions(t: Translator<'garments'>, offered: readonly OfferedStyle[]): SelectGroup[] {
  return STYLE_SHELVES.map((shelf) => ({
    label: t(`add.shelf.${shelf}`),
    options: offered.filter((style) => style.shelf === shelf).map(({ styleId, label }) => ({ value: styleId, label })),
  })).filter(({ options }) => options.length > 0);
}
