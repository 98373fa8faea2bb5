import { PhotographChoice } from '@/components/photographs/photograph-choice';
import type { Garment } from '@/lib/domain/layout/document';
import { hasPhotographs, withPhotographs } from '@/lib/domain/layout/photograph-scene';
import { sizeName, sizeOf } from '@/lib/domain/layout/sizes';
import type { Locale } from '@/lib/messages/locales';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { photographsFor } from '@/lib/server/blanks/photographs';
import { stopPhotographsAction, usePhotographsAction } from './photograph-actions';

/** The choice to show a garment on the shop's photographs; null where there are none of it in its colour. */
export async function garmentPhotographs(maker: MakerAccess, locale: Locale, jobId: string, garment: Garment) {
  const { garmentId } = garment;
  const photographs = await photographsFor(
    maker,
    garment.blanks.map(({ shopBlankId }) => shopBlankId),
  );
  const fresh = withPhotographs(garment, photographs);
  const [isShown, isThere] = [hasPhotographs(garment), hasPhotographs(fresh)];
  if (!(isShown || isThere)) return null;
  const isNew = isThere && JSON.stringify(photographsIn(fresh)) !== JSON.stringify(photographsIn(garment));
  return {
    summary: translatorFor(locale, 'photographs.job')('summary'),
    form: (
      <PhotographChoice
        shown={isShown ? whatOf(locale, garment) : null}
        offered={isNew ? whatOf(locale, fresh) : null}
        use={usePhotographsAction.bind(null, jobId, garmentId)}
        stop={stopPhotographsAction.bind(null, jobId, garmentId)}
      />
    ),
  };
}

function photographsIn({ blanks }: Garment) {
  return blanks.map(({ photographs }) => photographs ?? []);
}

/** `Front, M; Back, M` */
function whatOf(locale: Locale, garment: Garment): string {
  const t = translatorFor(locale, 'photographs.job');
  const readings = translatorFor(locale, 'readings');
  const each = garment.blanks.flatMap(({ blankId, photographs = [] }) =>
    photographs
      .filter(({ colourName }) => colourName === garment.cloth.name)
      .map(({ side, sizeId }) => {
        const size = sizeWords(readings, sizeName(sizeOf(garment, { blankId, sizeId })));
        return t('one', { side: readings(`side.${side}`), size });
      }),
  );
  return each.join('; ');
}
