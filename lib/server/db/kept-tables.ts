/**
 * The tables whose rows never change and never go, each with its key. Triggers hold them to it; everything personal lies
 * in tables beside them, so that erasing it touches none of these.
 */
export const keptTables = [
  { table: 'File', key: 'sha256' },
  { table: 'Art', key: 'id' },
  { table: 'Font', key: 'sha256' },
  { table: 'Revision', key: 'id' },
  { table: 'RevisionScene', key: 'id' },
  { table: 'Drawing', key: 'sha256' },
  { table: 'RevisionEvent', key: 'id' },
  { table: 'Answer', key: 'id' },
  { table: 'RecordEntry', key: 'id' },
  { table: 'Erasure', key: 'id' },
] as const;

/** Opens every sentence a trigger refuses with, so that the refusal can be told from other errors. */
export const refusalMark = 'kept row refused';
