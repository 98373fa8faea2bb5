import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { SignInForm } from '@/components/bench/sign-in-form';
import { PageHeading } from '@/components/ui/page-heading';
import { Words } from '@/components/ui/words';
import { subjectsFor } from '@/lib/messages/catalogue';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { readShop } from '@/lib/server/shop/read-shop';
import styles from '../door.module.css';
import { signInAction } from './actions';

const RESET_COMMAND = 'npm run reset-password';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'bench.signIn')('title') };
}

export default async function SignInPage() {
  const shop = await readShop();
  if (!shop) redirect('/set-up');
  if (await makerFromHeaders(await headers())) redirect('/jobs');
  const t = translatorFor(shop.locale, 'bench.signIn');
  return (
    <Words locale={shop.locale} messages={subjectsFor(shop.locale, ['bench', 'form'])} timeZone={shop.timeZone}>
      <main className={styles.door}>
        <PageHeading above={shop.name}>{t('title')}</PageHeading>
        <div className={styles.sheet}>
          <SignInForm action={signInAction} />
        </div>
        <div className={styles.aside}>
          <p>{t('forgotten')}</p>
          <p>{t.rich('forgottenText', { command: () => <code>{RESET_COMMAND}</code> })}</p>
        </div>
      </main>
    </Words>
  );
}
