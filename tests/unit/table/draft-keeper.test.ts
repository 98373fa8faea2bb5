import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DraftKeeper, type SaveAnswer } from '@/components/table/draft-keeper';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { teeWithPrints } from '../layout/sample-layout';

const first = teeWithPrints(['fullFront']);
const noted = (notes: string): LayoutDocument => ({ ...first, notes });

/** A shelf with one working copy on it: takes a copy only against the version that lies there, as the shop's does. */
class Shelf {
  version = 1;
  layout = first;
  /** What the next saves come back with instead, before the shelf is looked at. */
  answers: (SaveAnswer | Error)[] = [];
  /** Answers are lost on the way back while this holds. */
  isDeaf = false;
  saves = 0;

  readonly save = async (baseVersion: number, layout: LayoutDocument): Promise<SaveAnswer> => {
    this.saves += 1;
    const answer = this.answers.shift();
    if (answer instanceof Error) throw answer;
    if (answer) return answer;
    if (baseVersion !== this.version) {
      return { ok: false, reason: 'changedElsewhere', version: this.version, layout: this.layout };
    }
    this.put(structuredClone(layout));
    if (this.isDeaf) throw new Error('the answer was lost');
    return { ok: true, version: this.version };
  };

  put(layout: LayoutDocument): void {
    this.version += 1;
    this.layout = layout;
  }
}

function keeperOf(shelf: Shelf): DraftKeeper {
  return new DraftKeeper({ save: shelf.save, draft: { version: 1, layout: first }, now: () => new Date(0) });
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('keeping the working copy saved', () => {
  it('saves once the hand rests, and only the last of many changes', async () => {
    const shelf = new Shelf();
    const keeper = keeperOf(shelf);
    for (const notes of ['a', 'b', 'c']) keeper.offer(noted(notes));
    expect(keeper.saving().kind).toBe('waiting');
    await vi.runAllTimersAsync();
    expect([shelf.saves, shelf.layout.notes, keeper.saving()]).toEqual([1, 'c', { kind: 'saved', at: new Date(0) }]);
  });

  it('saves what was changed during a save after it, against the version that one made', async () => {
    const shelf = new Shelf();
    const keeper = keeperOf(shelf);
    keeper.offer(noted('a'));
    const flushed = keeper.flush();
    keeper.offer(noted('b'));
    expect(await flushed).toBe(true);
    expect([shelf.saves, shelf.version, shelf.layout.notes, keeper.isKept()]).toEqual([2, 3, 'b', true]);
  });

  it('writes nothing when a change was taken back before it was saved', async () => {
    const shelf = new Shelf();
    const keeper = keeperOf(shelf);
    keeper.offer(noted('a'));
    keeper.offer(first);
    await vi.runAllTimersAsync();
    expect([shelf.saves, keeper.saving().kind]).toEqual([0, 'asIs']);
  });

  it('says when the shop does not answer, and tries again by itself', async () => {
    const shelf = new Shelf();
    shelf.answers = [new Error('no network'), { ok: false, reason: 'signedOut' }];
    const keeper = keeperOf(shelf);
    keeper.offer(noted('a'));
    expect(await keeper.flush()).toBe(false);
    expect(keeper.saving()).toEqual({ kind: 'trying', reason: 'unreachable' });
    await vi.runOnlyPendingTimersAsync();
    expect(keeper.saving()).toEqual({ kind: 'trying', reason: 'signedOut' });
    await vi.runAllTimersAsync();
    expect([shelf.layout.notes, keeper.saving().kind]).toEqual(['a', 'saved']);
  });

  it('takes a save whose answer was lost for what it was', async () => {
    const shelf = new Shelf();
    shelf.isDeaf = true;
    const keeper = keeperOf(shelf);
    keeper.offer(noted('a'));
    await keeper.flush();
    shelf.isDeaf = false;
    await vi.runAllTimersAsync();
    expect([keeper.saving().kind, shelf.version, keeper.version()]).toEqual(['saved', 2, 2]);
  });

  it('tries again what could not be kept once it is changed', async () => {
    const shelf = new Shelf();
    shelf.answers = [{ ok: false, reason: 'invalid' }];
    const keeper = keeperOf(shelf);
    keeper.offer(noted('a'));
    await vi.runAllTimersAsync();
    expect([keeper.saving(), shelf.saves]).toEqual([{ kind: 'stopped', reason: 'invalid' }, 1]);
    keeper.offer(noted('b'));
    await vi.runAllTimersAsync();
    expect([shelf.layout.notes, keeper.saving().kind]).toEqual(['b', 'saved']);
  });

  it.each(['locked', 'noJob'] as const)('stops for good when the shop says %s', async (reason) => {
    const shelf = new Shelf();
    shelf.answers = [{ ok: false, reason }];
    const keeper = keeperOf(shelf);
    keeper.offer(noted('a'));
    await vi.runAllTimersAsync();
    keeper.offer(noted('b'));
    await vi.runAllTimersAsync();
    expect([keeper.saving(), shelf.saves, await keeper.flush()]).toEqual([{ kind: 'stopped', reason }, 1, false]);
  });
});

describe('a copy that somebody else saved first', () => {
  async function conflict() {
    const shelf = new Shelf();
    const keeper = keeperOf(shelf);
    shelf.put(noted('theirs'));
    keeper.offer(noted('mine'));
    await vi.runAllTimersAsync();
    return { shelf, keeper };
  }

  it('is never overwritten without being asked', async () => {
    const { shelf, keeper } = await conflict();
    expect(keeper.saving()).toMatchObject({ kind: 'changedElsewhere', theirs: { notes: 'theirs' } });
    keeper.offer(noted('still mine'));
    await vi.runAllTimersAsync();
    expect([shelf.layout.notes, await keeper.flush()]).toEqual(['theirs', false]);
  });

  it('is replaced when the maker says so', async () => {
    const { shelf, keeper } = await conflict();
    keeper.keepMine();
    await vi.runAllTimersAsync();
    expect([shelf.layout.notes, keeper.saving().kind]).toEqual(['mine', 'saved']);
  });

  it('is gone on from when the maker takes it over', async () => {
    const { shelf, keeper } = await conflict();
    expect(keeper.takeTheirs()?.notes).toBe('theirs');
    keeper.offer(noted('on from theirs'));
    await vi.runAllTimersAsync();
    expect([shelf.saves, shelf.layout.notes, keeper.saving().kind]).toEqual([2, 'on from theirs', 'saved']);
  });
});
