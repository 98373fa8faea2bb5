import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { cache } from 'react';
import styles from '@/app/aside.module.css';
import { PhoneForm, type PhoneOutcome } from '@/components/art/phone-form';
import { PageHeading } from '@/components/ui/page-heading';
import { Words } from '@/components/ui/words';
import { subjectsFor } from '@/lib/messages/catalogue';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { openPhone } from '@/lib/server/art/phone-upload';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import { readShop } from '@/lib/server/shop/read-shop';

type Asked = string | string[] | undefined;
type PhonePageProps = {
  params: Promise<{ token: string }>;
  searchParams: Promise<{ taken?: Asked; refused?: Asked; kind?: Asked }>;
};

/** Opened once a request, for the page and its title: a wrong token counts once. */
const opened = cache(async (token: string) => openPhone(token, (await headers()).get(CLIENT_HEADER) ?? ''));

export async function generateMetadata({ params }: PhonePageProps): Promise<Metadata> {
  const [phone, shop] = await Promise.all([opened((await params).token), readShop()]);
  const t = translatorFor(shop?.locale ?? defaultLocale, 'phone');
  return { title: { absolute: phone.ok ? t('page.title') : t(`closed.${phone.reason}`) } };
}

/** The maker's phone, let in by the code on the screen: one thing to do here. */
export default async function PhonePage({ params, searchParams }: PhonePageProps) {
  const [{ token }, asked, shop] = await Promise.all([params, searchParams, readShop()]);
  const phone = await opened(token);
  const t = translatorFor(shop?.locale ?? defaultLocale, 'phone');
  if (!(phone.ok && shop)) {
    const reason = phone.ok ? 'wrong' : phone.reason;
    return (
      <main className={styles.aside}>
        <PageHeading lead={t(`closed.${reason}Text`)}>{t(`closed.${reason}`)}</PageHeading>
      </main>
    );
  }
  const { jobTitle, expiresAt } = phone.access;
  const time = new Intl.DateTimeFormat(shop.locale, {
    hour: 'numeric',
    minute: '2-digit',
    timeZone: shop.timeZone,
  }).format(expiresAt);
  return (
    <main className={styles.aside}>
      <PageHeading above={t('page.for', { job: jobTitle })} lead={t('page.until', { time })}>
        {t('page.title')}
      </PageHeading>
      <Words locale={shop.locale} messages={subjectsFor(shop.locale, ['art', 'phone'])} timeZone={shop.timeZone}>
        <PhoneForm token={token} first={outcomeOf(asked)} />
      </Words>
    </main>
  );
}

/** What came of a form sent without scripts, as the address it was led back to says. */
function outcomeOf({ taken, refused, kind }: Awaited<PhonePageProps['searchParams']>): PhoneOutcome | null {
  if (typeof taken === 'string') return { kind: 'taken', name: taken };
  if (typeof refused !== 'string') return null;
  return { kind: 'refused', reason: refused, fileKind: typeof kind === 'string' ? kind : '' };
}
