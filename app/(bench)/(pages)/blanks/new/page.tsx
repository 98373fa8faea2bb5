import type { Metadata } from 'next';
import { requireMaker } from '@/app/maker';
import { NewBlankForm } from '@/components/blanks/new-blank-form';
import { PageHeading } from '@/components/ui/page-heading';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { requireShop } from '@/lib/server/shop/read-shop';
import { newBlankAction } from './actions';

export function generateMetadata(): Metadata {
  return { title: translatorFor(defaultLocale, 'blanks.make')('title') };
}

export default async function NewBlankPage() {
  await requireMaker();
  const { locale, unit, currency } = await requireShop();
  const t = translatorFor(locale, 'blanks.make');
  return (
    <>
      <PageHeading lead={t('lead')}>{t('title')}</PageHeading>
      <NewBlankForm action={newBlankAction} units={{ unit, currency }} />
    </>
  );
}
