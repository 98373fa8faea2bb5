import { type EditedBy, editListInTurn } from '@/lib/domain/people/edit-list';
import type { PeopleList } from '@/lib/domain/people/list';
import type { EditRefusal, ListEdit } from '@/lib/domain/people/list-edit';

/** What came of saving changes. `list` is null where nobody else changed anything: then it is what was sent, made here too. */
export type SaveListAnswer =
  | {
      readonly ok: true;
      readonly version: number;
      readonly list: PeopleList | null;
      readonly refused: readonly { readonly at: number; readonly reason: EditRefusal }[];
    }
  | { readonly ok: false; readonly reason: 'noJob' | 'locked' | 'invalid' | 'signedOut' };

export type SaveList = (baseVersion: number, edits: readonly ListEdit[]) => Promise<SaveListAnswer>;

export type ListSaving =
  | { readonly kind: 'asIs' | 'saved' | 'saving' }
  | { readonly kind: 'trying'; readonly reason: 'unreachable' | 'signedOut' }
  | { readonly kind: 'stopped'; readonly reason: 'noJob' | 'locked' | 'invalid' };

/** A change that was not made, since somebody else was faster. */
export type RefusedEdit = { readonly id: number; readonly edit: ListEdit; readonly reason: EditRefusal };

/** A list as it is shown: with what is not saved yet. */
export type ListShown = {
  readonly list: PeopleList;
  readonly saving: ListSaving;
  readonly refused: readonly RefusedEdit[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
};

type KeeperOptions = {
  readonly save: SaveList;
  readonly list: PeopleList;
  readonly by: () => EditedBy;
  /** How long to wait before trying again, ms. */
  readonly retryMs?: number;
};

/**
 * Keeps a list saved, change by change, one save at a time. Changes are shown at once and made again on top of whatever
 * others did meanwhile; what they were faster with is kept as theirs, and named.
 */
export class ListKeeper {
  readonly #options: Required<KeeperOptions>;
  readonly #listeners = new Set<() => void>();
  #kept: PeopleList;
  #sending: readonly ListEdit[] = [];
  #waiting: readonly ListEdit[] = [];
  #undo: (readonly ListEdit[])[] = [];
  #redo: (readonly ListEdit[])[] = [];
  #refusedCount = 0;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #shown: ListShown;

  constructor(options: KeeperOptions) {
    this.#options = { retryMs: 4_000, ...options };
    this.#kept = options.list;
    this.#shown = { list: options.list, saving: { kind: 'asIs' }, refused: [], canUndo: false, canRedo: false };
  }

  readonly shown = (): ListShown => this.#shown;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Whether everything is saved. */
  readonly isKept = (): boolean => this.#sending.length === 0 && this.#waiting.length === 0;

  /** The version that is saved. */
  readonly version = (): number => this.#kept.version;

  /** Makes changes that are taken back together. */
  readonly edit = (edits: readonly ListEdit[]): void => {
    const inverse = this.#make(edits);
    if (inverse.length === 0) return;
    this.#undo.push(inverse);
    this.#redo = [];
    this.#say({});
  };

  readonly undo = (): void => this.#step(this.#undo, this.#redo);
  readonly redo = (): void => this.#step(this.#redo, this.#undo);

  /** Puts a notice of a change that was not made away. */
  readonly close = (id: number): void => this.#say({ refused: this.#shown.refused.filter((each) => each.id !== id) });

  /** Takes a list that was read anew, unless something is under way: then its answer brings what others did. */
  readonly take = (list: PeopleList): void => {
    if (!this.isKept() || list.version <= this.#kept.version) return;
    this.#kept = list;
    this.#say({ list });
  };

  /** Saves at once what waits. */
  readonly flush = (): void => {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    void this.#save();
  };

  #step(from: (readonly ListEdit[])[], to: (readonly ListEdit[])[]): void {
    const edits = from.pop();
    if (!edits) return;
    const inverse = this.#make(edits);
    if (inverse.length > 0) to.push(inverse);
    this.#say({});
  }

  #make(edits: readonly ListEdit[]): readonly ListEdit[] {
    const { list, inverse } = editListInTurn(this.#shown.list, edits, this.#options.by());
    if (list === this.#shown.list) return [];
    this.#waiting = [...this.#waiting, ...edits];
    this.#say({ list });
    this.flush();
    return inverse;
  }

  /** Nothing is saved when nothing can be. What was too long to keep is tried again once something is changed. */
  #isAtRest(): boolean {
    const { saving } = this.#shown;
    return saving.kind === 'stopped' && saving.reason !== 'invalid';
  }

  async #save(): Promise<void> {
    if (this.#sending.length > 0 || this.#waiting.length === 0 || this.#isAtRest()) return;
    this.#sending = this.#waiting;
    this.#waiting = [];
    this.#say({ saving: { kind: 'saving' } });
    const answer = await this.#options.save(this.#kept.version, this.#sending).catch(() => null);
    if (answer === null || (!answer.ok && answer.reason === 'signedOut')) {
      this.#waiting = [...this.#sending, ...this.#waiting];
      this.#sending = [];
      this.#say({ saving: { kind: 'trying', reason: answer === null ? 'unreachable' : 'signedOut' } });
      this.#timer = setTimeout(this.flush, this.#options.retryMs);
      return;
    }
    if (!answer.ok) {
      this.#waiting = [...this.#sending, ...this.#waiting];
      this.#sending = [];
      this.#say({ saving: { kind: 'stopped', reason: answer.reason as 'noJob' | 'locked' | 'invalid' } });
      return;
    }
    this.#settle(answer);
    void this.#save();
  }

  #settle(answer: Extract<SaveListAnswer, { ok: true }>): void {
    const by = this.#options.by();
    const sent = this.#sending;
    const made = answer.list ?? { ...editListInTurn(this.#kept, sent, by).list, version: answer.version };
    this.#kept = made;
    this.#sending = [];
    const refused = answer.refused.flatMap(({ at, reason }) => {
      const edit = sent[at];
      this.#refusedCount += 1;
      return edit ? [{ id: this.#refusedCount, edit, reason }] : [];
    });
    this.#say({
      list: editListInTurn(made, this.#waiting, by).list,
      saving: { kind: this.#waiting.length === 0 ? 'saved' : 'saving' },
      refused: [...this.#shown.refused, ...refused].slice(-20),
    });
  }

  #say(change: Partial<Pick<ListShown, 'list' | 'saving' | 'refused'>>): void {
    this.#shown = { ...this.#shown, ...change, canUndo: this.#undo.length > 0, canRedo: this.#redo.length > 0 };
    for (const listener of this.#listeners) listener();
  }
}
