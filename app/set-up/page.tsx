import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { SetUpForm } from '@/components/bench/set-up-form';
import { PageHeading } from '@/components/ui/page-heading';
import { Words } from '@/components/ui/words';
import { subjectsFor } from '@/lib/messages/catalogue';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { passwordLimits } from '@/lib/server/auth/password-rules';
import { readShop } from '@/lib/server/shop/read-shop';
import styles from '../door.module.css';
import { setUpAction } from './actions';
import { currencyChoices, timeZoneChoices } from './choices';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'set-up')('title') };
}

export default async function SetUpPage() {
  if (await readShop()) redirect('/sign-in');
  const t = translatorFor(defaultLocale, 'set-up');
  return (
    <Words locale={defaultLocale} messages={subjectsFor(defaultLocale, ['set-up', 'form'])} timeZone="UTC">
      <main className={styles.door}>
        <PageHeading above={translatorFor(defaultLocale, 'site')('name')} lead={t('lead')}>
          {t('title')}
        </PageHeading>
        <div className={styles.sheet}>
          <SetUpForm
            action={setUpAction}
            timeZones={timeZoneChoices()}
            currencies={currencyChoices(defaultLocale)}
            leastPasswordLength={passwordLimits.min}
          />
        </div>
      </main>
    </Words>
  );
}
