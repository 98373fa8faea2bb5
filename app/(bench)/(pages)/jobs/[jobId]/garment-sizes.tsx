import { BlankPanel } from '@/components/garments/blank-panel';
import { ChartTable } from '@/components/garments/chart-table';
import { HangForm } from '@/components/garments/hang-form';
import { isGeneric, type OfferedStyle } from '@/components/garments/offered-style';
import { OneButtonForm } from '@/components/garments/one-button-form';
import { isSameStyle } from '@/lib/domain/layout/blank-edits';
import type { Garment, GarmentBlank } from '@/lib/domain/layout/document';
import { translatorFor } from '@/lib/messages/translator';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import type { BlankRow } from '@/lib/server/blanks/list-blanks';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { hangBlankAction, takeChartAction, takeDownBlankAction } from './blank-actions';
import { changesSince } from './changes-since';
import { sizesTitle } from './garment-words';
import { changeLines, shownChart } from './shown-charts';
import { shopBlankIdOf } from './style-to-hang';

type GarmentSizesProps = {
  maker: MakerAccess;
  shop: Shop;
  job: JobView;
  garment: Garment;
  blanks: readonly BlankRow[];
  offered: readonly OfferedStyle[];
};

/** The blanks under a garment with their charts, and more sizes to hang under it. */
export function GarmentSizes({ maker, shop, job, garment, blanks, offered }: GarmentSizesProps) {
  const t = translatorFor(shop.locale, 'garments');
  const { garmentId } = garment;
  const options = offered
    .filter(({ kind, middle }) => kind === garment.blanks[0]?.kind && middle !== null)
    .filter((style) => !garment.blanks.some((hung) => isHung(hung, style)))
    // An age band the garment lacks is more likely wanted than a second chart of one it has.
    .toSorted((a, b) => Number(hasBand(garment, a)) - Number(hasBand(garment, b)))
    .map((style) => ({
      value: style.styleId,
      label: isGeneric(style) ? t('add.alsoGeneric', { sizes: style.sizesLabel }) : style.label,
    }));
  return (
    <>
      {garment.blanks.map((blank) => (
        <HungBlank
          key={blank.blankId}
          maker={maker}
          shop={shop}
          job={job}
          garment={garment}
          blank={blank}
          blanks={blanks}
        />
      ))}
      {job.locked || options.length === 0 ? null : (
        <HangForm
          garmentId={garmentId}
          action={hangBlankAction.bind(null, job.jobId, garmentId, garment.blanks[0]?.fabric ?? '')}
          options={options}
        />
      )}
    </>
  );
}

type HungBlankProps = Omit<GarmentSizesProps, 'offered'> & { blank: GarmentBlank };

async function HungBlank({ maker, shop, job, garment, blank, blanks }: HungBlankProps) {
  const { locale, unit } = shop;
  const t = translatorFor(locale, 'garments');
  const { garmentId } = garment;
  const { blankId, shopBlankId } = blank;
  const listed = blanks.find((row) => row.blankId === shopBlankId);
  const changes = job.locked || !listed ? null : await changesSince(maker, locale, blank);
  const isCounted = garment.counts.some((count) => count.blankId === blankId && count.quantity > 0);
  return (
    <BlankPanel
      title={sizesTitle(locale, garment, blank)}
      source={
        listed ? (
          <a href={`/blanks/${listed.blankId}`}>{t('chart.own', { name: listed.name })}</a>
        ) : (
          t(shopBlankId === undefined ? 'chart.generic' : 'chart.goneFromList')
        )
      }
      chart={
        <ChartTable
          chart={shownChart(locale, unit, blank)}
          measureWord={t('chart.measure')}
          estimatedWord={t('chart.estimated')}
        />
      }
      changes={
        changes && {
          title: t('refresh.title'),
          lines: changeLines(locale, unit, changes),
          take: (
            <OneButtonForm
              action={takeChartAction.bind(null, job.jobId, garmentId, blankId)}
              words={t('refresh.submit')}
              waiting={t('refresh.waiting')}
            />
          ),
        }
      }
      takeDown={
        job.locked || garment.blanks.length === 1 || isCounted ? null : (
          <OneButtonForm
            action={takeDownBlankAction.bind(null, job.jobId, garmentId, blankId)}
            kind="quiet"
            words={t('takeDown.submit', { sizes: sizesTitle(locale, garment, blank).toLocaleLowerCase(locale) })}
            waiting={t('takeDown.waiting')}
          />
        )
      }
    />
  );
}

/** Whether an offered style hangs under the garment already. */
function isHung(hung: GarmentBlank, { styleId, kind, ageBand }: OfferedStyle): boolean {
  return isSameStyle(hung, { shopBlankId: shopBlankIdOf(styleId), kind, ageBand });
}

function hasBand({ blanks }: Garment, { ageBand }: OfferedStyle): boolean {
  return blanks.some((blank) => blank.ageBand === ageBand);
}
