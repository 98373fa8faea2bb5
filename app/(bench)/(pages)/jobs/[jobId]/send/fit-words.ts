import { fitNoteField, type StopToExplain } from '@/components/send/stop-to-explain';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { isStopping } from '@/lib/domain/layout/layout-fit';
import { garmentOf, sizeName } from '@/lib/domain/layout/sizes';
import { formatLength } from '@/lib/domain/measure/format-length';
import { type FitNotes, type GroupedFinding, groupedFindings, stoppedPrints } from '@/lib/domain/revision/fit-notes';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';

type InWords = Pick<Shop, 'locale' | 'unit'>;
type Layout = Pick<LayoutDocument, 'garments' | 'prints'>;

/** The prints that need a word why before they can be sent, each with what it does and what was written last time. */
export function stopsToExplain(shop: InWords, job: Pick<JobView, 'jobId' | 'draft'>, last: FitNotes): StopToExplain[] {
  const { layout } = job.draft;
  return stoppedPrints(layout).map(({ print, findings }) => ({
    field: fitNoteField(print.printId),
    print: print.name,
    sentences: findings.map((finding) => findingSentence(shop, layout, print, finding)),
    table: `/jobs/${job.jobId}/table`,
    note: print.fitNote ?? last[print.printId] ?? '',
  }));
}

/** What else there is to know of how prints lie, one sentence for sizes that share it; nothing of it stops a revision. */
export function fitToLookAt(shop: InWords, layout: Layout): string[] {
  return layout.prints.flatMap((print) =>
    groupedFindings(layout, print)
      .filter((finding) => !isStopping(finding))
      .map((finding) => findingSentence(shop, layout, print, finding)),
  );
}

/** `Crest, full front: crosses the armhole on Youth S and Youth M`. */
function findingSentence(
  { locale, unit }: InWords,
  layout: Layout,
  print: Print,
  { garmentId, kind, line, um, sizes }: GroupedFinding,
): string {
  const t = translatorFor(locale, 'send');
  const readings = translatorFor(locale, 'readings');
  const names = sizes.map((offered) => sizeWords(readings, sizeName(offered)));
  return t('fit.sentence', {
    print: print.name,
    place: readings(`place.${print.locationId}`),
    what: t(`fit.kind.${kind}`, { line: line ?? 'none', length: formatLength(um, unit) }),
    sizes: new Intl.ListFormat(locale).format(names),
    // A size of the same name may be fine on another garment.
    garment: print.garmentIds.length > 1 ? garmentOf(layout, garmentId).name : 'none',
  });
}
