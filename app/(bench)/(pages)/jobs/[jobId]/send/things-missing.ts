import type { ThingToDo } from '@/components/send/things-to-do';
import { sharpnessAt, sharpnessLimits } from '@/lib/domain/art/sharpness';
import type { Print } from '@/lib/domain/layout/document';
import { totalCount } from '@/lib/domain/layout/sizes';
import { formatLength, formatLimit } from '@/lib/domain/measure/format-length';
import { sendRefusal } from '@/lib/domain/revision/next-step';
import { translatorFor } from '@/lib/messages/translator';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { fitToLookAt } from './fit-words';

/** Why the next revision cannot be sent yet, each with where to put it right; empty when it can. */
export function thingsMissing(shop: Pick<Shop, 'locale'>, job: JobView): ThingToDo[] {
  const t = translatorFor(shop.locale, 'send.missing');
  const page = `/jobs/${job.jobId}`;
  const { garments, prints } = job.draft.layout;
  if (job.locked && 'number' in job.step) {
    return [{ text: t('locked', { number: job.step.number }), href: page, link: t('lockedLink') }];
  }
  if (job.step.step === 'waiting') {
    const { number } = job.step;
    return [
      {
        text: t('unchanged', { number }),
        href: `${page}/revisions/${number}`,
        link: t('unchangedLink', { number }),
      },
    ];
  }
  if (garments.length === 0) {
    return [{ text: t('noGarment'), href: `${page}#add-garment`, link: t('noGarmentLink') }];
  }
  return [
    ...(prints.length === 0 ? [{ text: t('noPrint'), href: `${page}/table`, link: t('noPrintLink') }] : []),
    ...listMissing(shop, job),
    ...(totalCount(garments) === 0 && !hasPeople(job) ? [{ text: t('noCounts'), href: `${page}#garments`, link: t('noCountsLink') }] : []),
  ];
}

/** What of the list of people stops sending. */
function listMissing({ locale }: Pick<Shop, 'locale'>, job: JobView): ThingToDo[] {
  const t = translatorFor(locale, 'send.missing');
  const href = `/jobs/${job.jobId}/people`;
  const { stops, unconfirmed } = job.open;
  return [
    ...(sendRefusal(job.draft.layout) === 'noPeople' ? [{ text: t('noPeople'), href, link: t('noPeopleLink') }] : []),
    ...(stops > 0 ? [{ text: t('listUnclear', { count: stops }), href, link: t('listUnclearLink') }] : []),
    ...(unconfirmed > 0
      ? [{ text: t('notConfirmed', { count: unconfirmed }), href, link: t('notConfirmedLink') }]
      : []),
  ];
}

function hasPeople({ draft }: Pick<JobView, 'draft'>): boolean {
  return draft.layout.people.lines.length > 0;
}

/** What the maker should look at before sending, though it can be sent: soft prints, prints near a seam, bare garments, garments without counts. */
export function thingsToLookAt(shop: Pick<Shop, 'locale' | 'unit'>, job: JobView): string[] {
  const t = translatorFor(shop.locale, 'send.look');
  const readings = translatorFor(shop.locale, 'readings');
  const { garments, prints } = job.draft.layout;
  return [
    ...prints.flatMap((print) => {
      const widest = widestUm(print);
      const { width } = print.content.art.inkBox;
      if (sharpnessAt(width, widest) !== 'soft') return [];
      const { sharpUm, fairUm } = sharpnessLimits(width);
      const lengths = {
        width: formatLength(widest, shop.unit),
        sharp: formatLimit(sharpUm, shop.unit),
        fair: formatLimit(fairUm, shop.unit),
      };
      return [t('soft', { print: print.name, place: readings(`place.${print.locationId}`), ...lengths })];
    }),
    ...fitToLookAt(shop, job.draft.layout),
    ...(job.open.findings > job.open.stops
      ? [t('list', { count: job.open.findings - job.open.stops })]
      : []),
    ...garments
      .filter(({ garmentId }) => prints.length > 0 && !prints.some(({ garmentIds }) => garmentIds.includes(garmentId)))
      .map(({ name }) => t('bare', { garment: name })),
    ...garments
      .filter((garment) => totalCount(garments) > 0 && totalCount([garment]) === 0)
      .map(({ name }) => t('uncounted', { garment: name })),
  ];
}

function widestUm(print: Pick<Print, 'sizeGroups'>): number {
  return Math.max(...print.sizeGroups.map(({ widthUm }) => widthUm));
}
