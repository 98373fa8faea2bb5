import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { messagesFor, subjectsFor } from '@/lib/messages/catalogue';
import { defaultLocale, isLocale, locales } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

type Tree = { [key: string]: string | Tree };

function leaves(tree: Tree, path: string[] = []): [string, string][] {
  return Object.entries(tree).flatMap(([key, value]) =>
    typeof value === 'string'
      ? [[[...path, key].join('.'), value] satisfies [string, string]]
      : leaves(value, [...path, key]),
  );
}

const keysOf = (tree: Tree) => leaves(tree).map(([key]) => key);

describe('the message catalogue', () => {
  it.each(locales)('has the same keys in %s as in English', (locale) => {
    expect(keysOf(messagesFor(locale)).sort()).toEqual(keysOf(messagesFor(defaultLocale)).sort());
  });

  it.each(locales)('has no empty message in %s', (locale) => {
    expect(leaves(messagesFor(locale)).filter(([, text]) => text.trim() === '')).toEqual([]);
  });

  it.each(locales)('leaves no subject file of %s out', (locale) => {
    const files = readdirSync(join('lib/messages', locale)).map((name) => name.replace(/\.json$/, ''));
    expect(Object.keys(messagesFor(locale)).sort()).toEqual(files.sort());
  });

  it.each(locales)('names the same values in %s as in English', (locale) => {
    const valueNames = (text: string) => [...new Set([...text.matchAll(/\{(\w+)/g)].map((match) => match[1]))].sort();
    const english = new Map(leaves(messagesFor(defaultLocale)));
    for (const [key, text] of leaves(messagesFor(locale))) {
      expect([key, valueNames(text)]).toEqual([key, valueNames(english.get(key) ?? '')]);
    }
  });

  it('hands over only the subjects asked for', () => {
    expect(Object.keys(subjectsFor('en', ['form']))).toEqual(['form']);
  });

  it('knows its languages from others', () => {
    expect([isLocale('en'), isLocale('EN'), isLocale('xx'), isLocale('toString')]).toEqual([true, false, false, false]);
  });
});

describe('the translator', () => {
  it('says what the file says', () => {
    const file = JSON.parse(readFileSync('lib/messages/en/site.json', 'utf8')) as { name: string };
    expect(translatorFor('en', 'site')('name')).toBe(file.name);
  });

  it('throws on a word that does not exist instead of showing its key', () => {
    const t = translatorFor('en', 'site');
    expect(() => t('thereIsNoSuchWord' as 'name')).toThrow(/thereIsNoSuchWord/);
  });
});
