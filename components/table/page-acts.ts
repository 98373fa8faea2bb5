import type { CommandRefusal } from '@/lib/editor/command';
import type { CommandSection } from '@/lib/editor/table-command';

/** Something the page itself does, beside the commands: it opens or goes to a part of it. */
export type PageAct = {
  readonly id: 'addPicture' | 'addFromPhone' | 'addLettering' | 'whole' | 'realSize' | 'toPrint' | 'closer' | 'further';
  readonly section: CommandSection;
  readonly keys: readonly string[];
  readonly refusal: CommandRefusal | null;
  readonly run: () => void;
};
