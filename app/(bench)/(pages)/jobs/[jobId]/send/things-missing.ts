import type { ThingToDo } from '@/components/send/things-to-do';
import { totalCount } from '@/lib/domain/layout/sizes';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { unprintableLetters } from '@/lib/domain/layout/unprintable-letters';
import { formatLength, formatLimit } from '@/lib/domain/measure/format-length';
import { sendRefusal } from '@/lib/domain/revision/next-step';
import { type DetailOf, type SoftPrint, softPrints, softPrintsToDecide } from '@/lib/domain/revision/soft-prints';
import { translatorFor } from '@/lib/messages/translator';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { fitToLookAt } from './fit-words';

/** Why the next revision cannot be sent yet, each with where to put it right; empty when it can. */
export function thingsMissing(shop: Pick<Shop, 'locale' | 'unit'>, job: JobView, type: TypeCase | null): ThingToDo[] {
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
    ...(totalCount(garments) === 0 && !hasPeople(job)
      ? [{ text: t('noCounts'), href: `${page}#garments`, link: t('noCountsLink') }]
      : []),
    ...[
      ...new Set(
        softPrintsToDecide(job.draft.layout, detailIn(job)).map((soft) => t('soft', softWords(shop, job, soft))),
      ),
    ].map((text) => ({
      text,
      href: `${page}/table`,
      link: t('softLink'),
    })),
    ...unprintableLetters(job.draft.layout, type).map(({ print, characters }) => ({
      text: t('letters', { print: print.name, characters: characters.join(' '), count: characters.length }),
      href: `${page}/table`,
      link: t('lettersLink'),
    })),
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
export function thingsToLookAt(shop: Pick<Shop, 'locale' | 'unit'>, job: JobView, type: TypeCase | null): string[] {
  const t = translatorFor(shop.locale, 'send.look');
  const { garments, prints } = job.draft.layout;
  return [
    // What is still to be decided stops the revision before anybody looks here. Two prints may be called the same.
    ...new Set(softPrints(job.draft.layout, detailIn(job)).map((soft) => t('soft', softWords(shop, job, soft)))),
    ...fitToLookAt(shop, job.draft.layout, type?.longest),
    ...(job.open.findings > job.open.stops ? [t('list', { count: job.open.findings - job.open.stops })] : []),
    ...garments
      .filter(({ garmentId }) => prints.length > 0 && !prints.some(({ garmentIds }) => garmentIds.includes(garmentId)))
      .map(({ name }) => t('bare', { garment: name })),
    ...garments
      .filter((garment) => totalCount(garments) > 0 && totalCount([garment]) === 0)
      .map(({ name }) => t('uncounted', { garment: name })),
  ];
}

/** What is known of the pictures of the job. */
function detailIn({ art }: Pick<JobView, 'art'>): DetailOf {
  return (sha256) => art.find(({ ref }) => ref.sha256 === sha256)?.facts ?? null;
}

function softWords(
  { locale, unit }: Pick<Shop, 'locale' | 'unit'>,
  { customer }: Pick<JobView, 'customer'>,
  { print, widthUm, fairUm }: SoftPrint,
) {
  return {
    print: print.name,
    place: translatorFor(locale, 'readings')(`place.${print.locationId}`),
    width: formatLength(widthUm, unit),
    fair: formatLimit(fairUm, unit),
    customer: customer.name,
  };
}
