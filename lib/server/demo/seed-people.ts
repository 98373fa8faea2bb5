import type { LayoutDocument } from '@/lib/domain/layout/document';
import { STARTING_COLUMNS, STARTING_SETTINGS } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import type { MakerAccess } from '../auth/maker-access';
import { newId } from '../db/new-id';
import { editPeople } from '../people/edit-people';

/** The crews, all invented: boat, seat, name, and the size of their tee as `band/size`. Names try the type. */
const CREWS = [
  ['Heron', '1', 'Siân Ó Briain', 'adult/M'],
  ['Heron', '2', 'Lena Þórsdóttir', 'adult/S'],
  ['Heron', '3', 'Łukasz Żak', 'adult/L'],
  ['Heron', '4', 'Anne-Marie O’Neil', 'adult/M'],
  ['Heron', '5', 'Nguyễn Thị Ánh', 'adult/S'],
  ['Heron', '6', 'Bo Carr', 'adult/XL'],
  ['Heron', '7', 'José Ibáñez', 'adult/L'],
  ['Heron', '8', 'Zoë van der Meer', 'adult/M'],
  ['Heron', 'C', 'Wren Okafor', 'youth/L'],
  ['Otter', '1', 'D’Arcy Le Bon', 'youth/L'],
  ['Otter', '2', 'שירה לוי', 'youth/S'],
  ['Otter', '3', 'Mia Ode', 'youth/S'],
  ['Otter', '4', 'Maximiliana Featherstonehaugh-Worthington', 'adult/M'],
  ['Otter', '5', 'Wanjirũ wa Kamau', 'adult/L'],
  ['Otter', '6', 'Søren Ek', 'adult/2XL'],
  ['Otter', '7', 'Jean-François Dubé', 'adult/XL'],
  ['Otter', '8', 'Ama Mensah', 'adult/L'],
  ['Otter', 'C', 'Tomás Peña', 'youth/L'],
] as const;

/** Made besides the crews. */
const SPARE = 'adult/M';
const COX_SEAT = 'C';
const WHY_COX = 'Coxes wear a C';

/** Puts the crews on the list of a job whose garment is laid out: one tee each, and a spare one. */
export async function seedPeople(maker: MakerAccess, jobId: string, layout: LayoutDocument): Promise<void> {
  const [garment] = layout.garments;
  if (!garment) throw new Error('the demo job has no garment');
  const { garmentId } = garment;
  const sizeOf = (named: string) => {
    const [band, sizeId = ''] = named.split('/');
    const blank = garment.blanks.find(({ ageBand }) => ageBand === band);
    if (!blank?.sizes.some((size) => size.sizeId === sizeId)) throw new Error(`the demo has no size ${named}`);
    return { blankId: blank.blankId, sizeId };
  };
  const columns = [
    ...STARTING_COLUMNS.map((column) => (column.kind === 'number' ? { ...column, name: 'Seat' } : column)),
    { columnId: 'boat', name: 'Boat', kind: 'group' as const },
  ];
  const { confirmEach } = STARTING_SETTINGS;
  const edits: ListEdit[] = [
    { edit: 'columns', was: [...STARTING_COLUMNS], columns },
    { edit: 'settings', settings: { confirmEach, numberOnceWithin: 'group' } },
    { edit: 'spare', garmentId, ...sizeOf(SPARE), quantity: 1 },
    ...CREWS.map(([boat, number, name, size]): ListEdit => {
      const items = [{ itemId: newId(), garmentId, size: sizeOf(size), typed: '', quantity: 1 }];
      const about = { code: 'lettersInNumber', place: 'number', about: number, why: WHY_COX };
      const meant = number === COX_SEAT ? [about] : [];
      return { edit: 'add', line: { personId: newId(), fields: { name, number, boat }, items, meant }, before: null };
    }),
  ];
  const edited = await editPeople(maker, jobId, edits);
  if (!edited.ok || edited.refused.length > 0) throw new Error(`demo people: ${JSON.stringify(edited)}`);
}
