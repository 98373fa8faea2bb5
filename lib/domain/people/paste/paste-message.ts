import { cleanPasted } from '../clean-field';
import type { GarmentOnOffer, SizeOnOffer } from '../list';
import { type ReadSize, readSize } from '../read-size';

/** Somebody as a message names them. `left` is what is neither size nor number: the name. */
export type SaidPerson = {
  readonly name: string;
  readonly number: string;
  readonly size: string;
  readonly quantity: number;
};

/** Words of a size in a message are at most so many: `Youth extra large`. */
const MOST_SIZE_WORDS = 3;
const BULLET = /^\s*(?:[-–—•*·]\s+|\(?\d{1,3}[.)]\s+)/u;

/**
 * The people a text message names, one a line or one between commas: `Mia 7 youth M, Uncle Bob XL 22`. Size and number
 * may stand on either side of the name; what is neither is the name.
 */
export function peopleInMessage(text: string, garments: readonly GarmentOnOffer[]): SaidPerson[] {
  const sizes = garments.flatMap((garment) => garment.sizes);
  return text
    .split(/\r\n|\r|\n|;/u)
    .flatMap((line) => parts(line.replace(BULLET, ''), sizes))
    .map((part) => saidPerson(part, sizes))
    .filter(({ name, number, size }) => name !== '' || number !== '' || size !== '');
}

/** A comma parts people where what stands on both its sides could be one; otherwise it parts a name from its size. */
function parts(line: string, sizes: readonly SizeOnOffer[]): string[] {
  const byComma = line
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const people = byComma.filter((part) => isWhole(part, sizes));
  const split = people.length * 2 >= byComma.length ? byComma : [byComma.join(' ')];
  return split.flatMap((part) => {
    const byAnd = part.split(/\s+(?:and|&|\+)\s+/iu);
    return byAnd.every((each) => isWhole(each, sizes)) ? byAnd : [part];
  });
}

/** Whether a part names somebody with a size or a number of their own. */
function isWhole(part: string, sizes: readonly SizeOnOffer[]): boolean {
  const { name, number, size } = saidPerson(part, sizes);
  return name !== '' && (number !== '' || size !== '');
}

function saidPerson(part: string, sizes: readonly SizeOnOffer[]): SaidPerson {
  const words = cleanPasted(part)
    .split(/\s+/u)
    .map((word) => word.replace(/^[([{:–—-]+|[)\]}:.–—-]+$/gu, ''))
    .filter((word) => word !== '');
  const at = sizeIn(words, sizes);
  const size = at === null ? '' : words.slice(at.from, at.to).join(' ');
  const rest = at === null ? words : [...words.slice(0, at.from), ...words.slice(at.to)];
  const countAt = rest.findIndex((word) => /^(?:[x×]\d{1,3}|\d{1,3}×)$/iu.test(word));
  const quantity = countAt < 0 ? 1 : Number(/\d+/u.exec(rest[countAt] ?? '')?.[0] ?? 1);
  const uncounted = rest.filter((word, index) => index !== countAt && !/^sizes?$/iu.test(word));
  const numberAt = uncounted.findIndex((word) => /^(?:#|no\.?)?\d{1,3}$/iu.test(word));
  const number = numberAt < 0 ? '' : (uncounted[numberAt] ?? '').replace(/^\D+/u, '');
  const name = uncounted.filter((word, index) => index !== numberAt && !/^(?:#|no|number|nr)$/iu.test(word)).join(' ');
  return { name, number, size, quantity: Math.max(1, quantity) };
}

/** Where the size stands: the longest run of words that is one, the last of several as long. */
function sizeIn(words: readonly string[], sizes: readonly SizeOnOffer[]): { from: number; to: number } | null {
  for (let length = Math.min(MOST_SIZE_WORDS, words.length); length > 0; length -= 1) {
    for (let from = words.length - length; from >= 0; from -= 1) {
      const said = words.slice(from, from + length);
      // A bare number is somebody's number before it is part of a size: `7 youth M`.
      if (said.some((word, at) => /^#?\d+$/u.test(word) && !/^mo/iu.test(said[at + 1] ?? ''))) continue;
      if (isSaidSize(readSize(said.join(' '), sizes))) return { from, to: from + length };
    }
  }
  return null;
}

function isSaidSize(read: ReadSize): boolean {
  return read.ok || read.reason !== 'unknown';
}
