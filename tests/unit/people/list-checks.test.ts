import { faker } from '@faker-js/faker';
import { describe, expect, it } from 'vitest';
import { lineContent } from '@/lib/domain/people/line-content';
import type { ListLine } from '@/lib/domain/people/list';
import { listChecks, openInList } from '@/lib/domain/people/list-checks';
import { AGAINST, line, listOf, TEE, teeItem } from './some-list';

const found = (...lines: ListLine[]) =>
  listChecks(listOf(...lines), AGAINST)
    .filter(({ meant }) => meant === null)
    .map(({ personId, place, finding }) => [
      lines.findIndex((each) => each.personId === personId) + 1,
      place,
      finding.code,
    ]);

const better = (name: string, number = '1') =>
  listChecks(
    listOf(
      line('Anna Berg', '2', teeItem('youth/S')),
      line('Bo Carr', '3', teeItem('youth/S')),
      line(name, number, teeItem('youth/M')),
    ),
    AGAINST,
  )
    .filter(({ meant }) => meant === null)
    .map(({ finding }) => [finding.code, 'better' in finding ? finding.better : null]);

describe('checks of a list', () => {
  it('find nothing in a list that is right', () => {
    expect(found(line('Mia Ode', '7', teeItem('youth/M')), line('Bo Carr', '22', teeItem('adult/XL')))).toEqual([]);
  });

  it('find a missing size, one nobody can read, and one that could be two', () => {
    expect(
      found(
        line('Mia Ode', '7'),
        line('Bo Carr', '22', teeItem('the usual')),
        line('Ada Pike', '4', teeItem('M')),
        line('Jo Finch', '5', teeItem('6XL')),
      ),
    ).toEqual([
      [1, 'size/tee', 'sizeMissing'],
      [2, 'size/tee', 'sizeUnknown'],
      [3, 'size/tee', 'sizeAmbiguous'],
      [4, 'size/tee', 'sizeNotOffered'],
    ]);
  });

  it('find one number twice on one garment, and tell 0 from 00', () => {
    const twice = found(line('Mia Ode', '7', teeItem('youth/M')), line('Bo Carr', '7', teeItem('youth/M')));
    expect(twice).toEqual([
      [1, 'number', 'numberTwice'],
      [2, 'number', 'numberTwice'],
    ]);
    expect(found(line('Mia Ode', '0', teeItem('youth/M')), line('Bo Carr', '00', teeItem('youth/M')))).toEqual([]);
  });

  it('count a number once within each group where the list says so', () => {
    const columns = [...listOf().columns, { columnId: 'team', name: 'Team', kind: 'group' as const }];
    const inTeam = (team: string, name: string) => {
      const each = line(name, '7', teeItem('youth/M'));
      return { ...each, fields: { ...each.fields, team } };
    };
    const codes = (a: string, b: string) => {
      const list = { ...listOf(inTeam(a, 'Mia Ode'), inTeam(b, 'Bo Carr')), columns };
      return listChecks({ ...list, settings: { ...list.settings, numberOnceWithin: 'group' } }, AGAINST).map(
        ({ finding }) => finding.code,
      );
    };
    expect(codes('Red', 'Blue')).toEqual([]);
    expect(codes('Red', 'red ')).toContain('numberTwice');
  });

  it('find one name twice however it is written, and names that only look the same', () => {
    expect(found(line('Mia Ode', '1', teeItem('youth/M')), line('mia  ode', '2', teeItem('youth/M')))).toContainEqual([
      1,
      'name',
      'nameTwice',
    ]);
    // A Cyrillic M, i and a (UTS #39, confusables.txt).
    expect(found(line('Mia', '1', teeItem('youth/M')), line('Міа', '2', teeItem('youth/M')))).toContainEqual([
      1,
      'name',
      'lookAlikeName',
    ]);
  });

  it.each([
    [' Mia Ode', 'straySpaces', 'Mia Ode'],
    ['Mia\u00a0 Ode', 'straySpaces', 'Mia Ode'],
    ['MIA ODE', 'mixedCase', 'Mia Ode'],
    ['mia ode', 'mixedCase', 'Mia Ode'],
    ['mIA Ode', 'mixedCase', 'Mia Ode'],
    ['SEAN O’BRIEN-MCKAY', 'mixedCase', 'Sean O’Brien-McKay'],
    // Cyrillic а (U+0430).
    ['Miа Ode', 'lookAlike', 'Mia Ode'],
    ['Ｍia Ode', 'lookAlike', 'Mia Ode'],
    ['Sean O`Brien', 'lookAlike', 'Sean O’Brien'],
    ['J0hn Ode', 'lookAlike', 'John Ode'],
    ['Mi\u200ba Ode', 'invisible', 'Mia Ode'],
    ['Mia\u00ad Ode', 'invisible', 'Mia Ode'],
    ['17', 'numberForName', null],
    ['M'.concat('ia'.repeat(40)), 'veryLong', null],
  ])('find what is odd about %j', (name, code, mended) => {
    expect(better(name)).toContainEqual([code, mended]);
  });

  it.each([
    ['1O', 'lettersInNumber', '10'],
    ['l2', 'lettersInNumber', '12'],
    ['#7', 'lettersInNumber', '7'],
    ['Cox', 'lettersInNumber', null],
    ['１２', 'lookAlike', '12'],
  ])('find what is odd about the number %s', (number, code, mended) => {
    expect(better('Mia Ode', number)).toEqual([[code, mended]]);
  });

  it('find a year that cannot be', () => {
    const columns = [...listOf().columns, { columnId: 'class', name: 'Class', kind: 'year' as const }];
    const codes = (year: string) => {
      const mia = line('Mia Ode', '7', teeItem('youth/M'));
      const list = { ...listOf({ ...mia, fields: { ...mia.fields, class: year } }), columns };
      return listChecks(list, AGAINST).map(({ finding }) => finding.code);
    };
    for (const year of ['2026', 'Class of 2029', '1974', '27', "'27"]) expect(codes(year)).toEqual([]);
    for (const year of ['2206', '20026', 'Class of 1826', '206']) expect(codes(year)).toEqual(['yearUnlikely']);
  });

  it('find a field that lettering prints and nobody filled in', () => {
    const checks = listChecks(listOf(line('Mia Ode', '', teeItem('youth/M'))), {
      ...AGAINST,
      letteredColumnIds: ['number'],
    });
    expect(checks.map(({ place, finding }) => [place, finding.code])).toEqual([['number', 'fieldMissing']]);
  });

  it('hold the list against what was ordered, size by size', () => {
    const ordered = [
      { blankId: 'tee-youth', sizeId: 'M', quantity: 2 },
      { blankId: 'tee-adult', sizeId: 'XL', quantity: 1 },
    ];
    const list = listOf(line('Mia Ode', '7', teeItem('youth/M')), line('Bo Carr', '22', teeItem('adult/XL')));
    const checks = (spares: { quantity: number }[]) => {
      const named = spares.map((spare) => ({ garmentId: 'tee', blankId: 'tee-youth', sizeId: 'M', ...spare }));
      const settings = { ...list.settings, spares: named };
      return listChecks({ ...list, settings }, { ...AGAINST, garments: [{ ...TEE, ordered }] });
    };
    expect(checks([])[0]?.finding).toMatchObject({
      code: 'countsDiffer',
      differences: [{ ordered: 2, listed: 1, size: { words: 'Youth M' } }],
    });
    expect(checks([{ quantity: 1 }])).toEqual([]);
  });

  it('leave what was meant so settled for as long as it stays as it was', () => {
    const mia = line('Mia Ode', '7', teeItem('youth/M'));
    const twin = line('Bo Carr', '7', teeItem('youth/M'));
    const [check] = listChecks(listOf(mia, twin), AGAINST);
    if (!check) throw new Error('nothing was found');
    const meant = { code: check.finding.code, place: check.place, about: check.about, why: 'They share it' };
    const settled = { ...mia, meant: [meant] };
    const after = listChecks(listOf(settled, twin), AGAINST);
    expect(after.map(({ meant: why }) => why)).toEqual(['They share it', 'They share it']);
    expect(openInList(listOf(settled, twin), after)).toEqual({ findings: 0, stops: 0, unconfirmed: 0 });
    const third = listChecks(listOf(settled, twin, line('Ada Pike', '7', teeItem('youth/M'))), AGAINST);
    expect(third.map(({ meant: why }) => why)).toEqual([null, null, null]);
  });

  it('find nothing in names of the world as they are written', () => {
    // @faker-js/faker, names in Latin script of several languages; names it draws twice are left out.
    faker.seed(18);
    const names = new Set(Array.from({ length: 60 }, () => faker.person.lastName()));
    const more = [
      'Siân Ó Briain',
      'Nguyễn Thị Ánh',
      "D'Arcy Le Bon",
      'Zoë van der Meer',
      'Łukasz Żak',
      'Ngũgĩ wa Thiong’o',
      'José Mª Ibáñez',
      'שירה לוי',
      'محمد علي',
      '山田 花子',
      'J. R. McKay',
      'Anne-Marie O’Neil',
    ];
    for (const name of [...names, ...more]) {
      expect(
        better(name).filter(([code]) => code !== 'lookAlikeName' && code !== 'nameTwice'),
        name,
      ).toEqual([]);
    }
  });

  it('say the same content of lines that say the same', () => {
    const mia = line('Mia', '7', teeItem('youth/M'));
    expect(lineContent({ ...mia, fields: { number: '7', name: 'Mia', team: '' }, items: [teeItem('youth/M')] })).toBe(
      lineContent(mia),
    );
  });
});
