import { memo } from 'react';
import { locationsOffered } from '@/lib/editor/commands/add-print';
import { likelyLocation } from '@/lib/editor/likely-location';
import { type TableEditor, tableState } from '@/lib/editor/table-editor';
import type { PhoneCode } from '../art/phone-code';
import { PhoneSlip } from '../art/phone-slip';
import { AddLettering } from './add-lettering';
import { AddPicture } from './add-picture';
import { SlipSheet } from './slip-sheet';
import { Slips } from './slips';
import type { usePictures } from './use-pictures';
import type { Change } from './use-reading';
import type { Perform } from './use-table-commands';

type TableSlipsProps = Pick<ReturnType<typeof usePictures>, 'pictures' | 'progress' | 'add' | 'takeIn' | 'place'> & {
  editor: TableEditor;
  change: Change;
  perform: Perform;
  jobId: string;
  phoneCode: (jobId: string) => Promise<PhoneCode | null>;
  href: (sha256: string) => string;
};

/** The slips beside the paper, the one that adds a picture last. A drag does not draw them anew until the hand rests. */
export const TableSlips = memo(function TableSlips({
  editor,
  change,
  perform,
  jobId,
  phoneCode,
  href,
  pictures,
  progress,
  add,
  takeIn,
  place,
}: TableSlipsProps) {
  const state = tableState(editor);
  const likely = editor.locked ? null : likelyLocation(state);
  return (
    <SlipSheet editor={editor}>
      <Slips editor={editor} change={change} perform={perform}>
        {likely ? (
          <AddPicture
            {...{ pictures, likely, href, progress }}
            offered={locationsOffered(state)}
            onFile={takeIn}
            onPlace={place}
            phone={<PhoneSlip id="add-from-phone" jobId={jobId} makeCode={phoneCode} onArrived={add} />}
          />
        ) : null}
        {likely ? <AddLettering editor={editor} /> : null}
      </Slips>
    </SlipSheet>
  );
});
