import type { LayoutDocument } from '@/lib/domain/layout/document';
import { saysTheSame } from '@/lib/editor/same-layout';

/** What came of saving the working copy. */
export type SaveAnswer =
  | { readonly ok: true; readonly version: number }
  | { readonly ok: false; readonly reason: 'noJob' | 'locked' | 'invalid' | 'signedOut' }
  | {
      readonly ok: false;
      readonly reason: 'changedElsewhere';
      readonly version: number;
      readonly layout: LayoutDocument;
    };

export type SaveDraft = (baseVersion: number, layout: LayoutDocument) => Promise<SaveAnswer>;

/** How it stands with saving. `theirs` is the copy somebody else saved first. */
export type Saving =
  | { readonly kind: 'asIs' | 'waiting' | 'saving' }
  | { readonly kind: 'saved'; readonly at: Date }
  | { readonly kind: 'stopped'; readonly reason: 'noJob' | 'locked' | 'invalid' }
  | { readonly kind: 'trying'; readonly reason: 'unreachable' | 'signedOut' }
  | { readonly kind: 'changedElsewhere'; readonly version: number; readonly theirs: LayoutDocument };

type KeeperOptions = {
  readonly save: SaveDraft;
  readonly draft: { readonly version: number; readonly layout: LayoutDocument };
  readonly now: () => Date;
  /** How long the hand must rest before what it did is saved, ms. */
  readonly restMs?: number;
  /** How long to wait before trying again, ms. */
  readonly retryMs?: number;
};

/**
 * Keeps the working copy saved: a moment after each change, one save at a time, always against the version it was edited
 * from. What somebody else saved first is never overwritten without being asked.
 */
export class DraftKeeper {
  readonly #options: Required<KeeperOptions>;
  readonly #listeners = new Set<() => void>();
  #kept: { version: number; layout: LayoutDocument };
  #keptAt: Date | null = null;
  #latest: LayoutDocument;
  #saving: Saving = { kind: 'asIs' };
  #timer: ReturnType<typeof setTimeout> | null = null;
  #underWay: Promise<void> | null = null;

  constructor(options: KeeperOptions) {
    this.#options = { restMs: 600, retryMs: 4_000, ...options };
    this.#kept = options.draft;
    this.#latest = options.draft.layout;
  }

  /** How it stands; the same object until it changes. */
  readonly saving = (): Saving => this.#saving;

  /** The version the working copy has where it is kept. */
  readonly version = (): number => this.#kept.version;

  /** Whether everything that was offered is kept. */
  readonly isKept = (): boolean => this.#latest === this.#kept.layout;

  /** Calls back at every change of how it stands; the returned function ends it. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** The layout as it is now: saved once the hand rests. */
  readonly offer = (layout: LayoutDocument): void => {
    if (layout === this.#latest) return;
    this.#latest = layout;
    if (this.#isAtRest()) return;
    if (this.#saving.kind !== 'saving') this.#say({ kind: 'waiting' });
    this.#saveIn(this.#options.restMs);
  };

  /** Saves at once what is not kept yet. True once all of it is. */
  readonly flush = async (): Promise<boolean> => {
    this.#stopTimer();
    while (!(this.isKept() || this.#isAtRest())) {
      const before = this.#latest;
      await (this.#underWay ?? this.#saveNow());
      if (this.#saving.kind === 'trying' && this.#latest === before) break;
    }
    return this.isKept();
  };

  /** After `changedElsewhere`: keeps this table's layout over theirs. */
  readonly keepMine = (): void => {
    if (this.#saving.kind !== 'changedElsewhere') return;
    this.#kept = { version: this.#saving.version, layout: this.#saving.theirs };
    this.#say({ kind: 'waiting' });
    this.#saveIn(0);
  };

  /** After `changedElsewhere`: theirs becomes the copy that further edits start from. Null when there is none. */
  readonly takeTheirs = (): LayoutDocument | null => {
    if (this.#saving.kind !== 'changedElsewhere') return null;
    const { version, theirs } = this.#saving;
    this.#latest = theirs;
    this.#keep(version, theirs);
    return theirs;
  };

  /** Nothing is saved while somebody has to decide, or when nothing can be. An invalid layout is tried again once changed. */
  #isAtRest(): boolean {
    const saving = this.#saving;
    return saving.kind === 'changedElsewhere' || (saving.kind === 'stopped' && saving.reason !== 'invalid');
  }

  #saveIn(ms: number): void {
    this.#stopTimer();
    this.#timer = setTimeout(() => void this.#saveNow(), ms);
  }

  #stopTimer(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
  }

  #saveNow(): Promise<void> {
    this.#stopTimer();
    this.#underWay ??= this.#saveLatest().finally(() => {
      this.#underWay = null;
      const { kind } = this.#saving;
      if (kind === 'trying') this.#saveIn(this.#options.retryMs);
      else if (kind === 'waiting') this.#saveIn(this.#options.restMs);
    });
    return this.#underWay;
  }

  async #saveLatest(): Promise<void> {
    const layout = this.#latest;
    if (this.isKept()) return this.#sayKept();
    this.#say({ kind: 'saving' });
    const answer = await this.#options.save(this.#kept.version, layout).catch(() => null);
    if (answer === null) return this.#say({ kind: 'trying', reason: 'unreachable' });
    if (answer.ok) return this.#keep(answer.version, layout);
    switch (answer.reason) {
      case 'changedElsewhere':
        // An earlier save of ours may have arrived although its answer was lost on the way.
        if (saysTheSame(answer.layout, layout)) return this.#keep(answer.version, layout);
        return this.#say({ kind: 'changedElsewhere', version: answer.version, theirs: answer.layout });
      case 'signedOut':
        return this.#say({ kind: 'trying', reason: 'signedOut' });
      default:
        return this.#say({ kind: 'stopped', reason: answer.reason });
    }
  }

  #keep(version: number, layout: LayoutDocument): void {
    this.#kept = { version, layout };
    this.#keptAt = this.#options.now();
    if (this.isKept()) this.#sayKept();
    else this.#say({ kind: 'waiting' });
  }

  #sayKept(): void {
    this.#say(this.#keptAt ? { kind: 'saved', at: this.#keptAt } : { kind: 'asIs' });
  }

  #say(saving: Saving): void {
    this.#saving = saving;
    for (const listener of this.#listeners) listener();
  }
}
