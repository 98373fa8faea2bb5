import { fitNoteField, type StopToExplain } from '@/components/send/stop-to-explain';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { isStopping } from '@/lib/domain/layout/layout-fit';
import { garmentOf, keyOf, sizeName } from '@/lib/domain/layout/sizes';
import type { SetType } from '@/lib/domain/layout/type-case';
import { formatLength } from '@/lib/domain/measure/format-length';
import { type FitNotes, type GroupedFinding, groupedFindings, stoppedPrints } from '@/lib/domain/revision/fit-notes';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';

type InWords = Pick<Shop, 'locale' | 'unit'>;
type Layout = Pick<LayoutDocument, 'garments' | 'prints'>;

/** The prints that need a word why before they can be sent, each with what it does and what was written last time. */
export function stopsToExplain(
  shop: InWords,
  job: Pick<JobView, 'jobId' | 'draft'>,
  last: FitNotes,
  setType?: SetType,
): StopToExplain[] {
  const { layout } = job.draft;
  return stoppedPrints(layout, setType).map(({ print, findings }) => ({
    field: fitNoteField(print.printId),
    print: print.name,
    sentences: findingSentences(shop, layout, print, findings),
    table: `/jobs/${job.jobId}/table`,
    note: print.fitNote ?? last[print.printId] ?? '',
  }));
}

/** What else there is to know of how prints lie, one sentence for sizes that share it; nothing of it stops a revision. */
export function fitToLookAt(shop: InWords, layout: Layout, setType?: SetType): string[] {
  return layout.prints.flatMap((print) =>
    findingSentences(
      shop,
      layout,
      print,
      groupedFindings(layout, print, setType).filter((finding) => !isStopping(finding)),
    ),
  );
}

/** `Crest, full front: crosses the armhole on Youth S and Youth M`, one for findings that are on the same sizes. */
function findingSentences(
  { locale, unit }: InWords,
  layout: Layout,
  print: Print,
  findings: readonly GroupedFinding[],
): string[] {
  const t = translatorFor(locale, 'send');
  const readings = translatorFor(locale, 'readings');
  const list = new Intl.ListFormat(locale);
  return sameSizes(findings).map(([{ garmentId, sizes }, whats]) =>
    t('fit.sentence', {
      print: print.name,
      place: readings(`place.${print.locationId}`),
      what: list.format(
        whats.map(({ kind, line, um }) =>
          t(`fit.kind.${kind}`, { line: line ?? 'none', length: formatLength(um, unit) }),
        ),
      ),
      sizes: list.format(sizes.map((offered) => sizeWords(readings, sizeName(offered)))),
      // A size of the same name may be fine on another garment.
      garment: print.garmentIds.length > 1 ? garmentOf(layout, garmentId).name : 'none',
    }),
  );
}

function sameSizes(findings: readonly GroupedFinding[]): [GroupedFinding, GroupedFinding[]][] {
  const groups = new Map<string, [GroupedFinding, GroupedFinding[]]>();
  for (const finding of findings) {
    const key = JSON.stringify([finding.garmentId, finding.sizes.map(keyOf)]);
    const [first, all] = groups.get(key) ?? [finding, []];
    groups.set(key, [first, [...all, finding]]);
  }
  return [...groups.values()];
}
