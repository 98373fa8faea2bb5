'use client';

import dynamic from 'next/dynamic';
import { useRouter } from 'next/navigation';
import { useEffect, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { LayoutTableProps } from '@/components/table/layout-table';
import styles from './open-table.module.css';

// The table draws on canvases and measures the window: there is nothing of it to make on the server.
const LaidTable = dynamic(() => import('./laid-table').then(({ LaidTable: Laid }) => Laid), {
  ssr: false,
  loading: Opening,
});

type OpenTableProps = Omit<LayoutTableProps, 'href' | 'line'> & {
  /** Another one each time the server makes the page. */
  serving: string;
};

/** Servings of this page that were worked at already. */
const used = new Set<string>();

/**
 * The layout table, once the browser has what it draws with. Going back in the browser brings the page as it was served
 * before it was worked at; then it is served again first, since editing would start from an old copy.
 */
export function OpenTable({ serving, ...props }: OpenTableProps) {
  const router = useRouter();
  const [stale] = useState(() => (used.has(serving) ? serving : null));
  const isStale = serving === stale;
  useEffect(() => {
    if (isStale) router.refresh();
    else used.add(serving);
  }, [isStale, serving, router]);
  return isStale ? <Opening /> : <LaidTable {...props} />;
}

function Opening() {
  const t = useTranslations('table');
  return (
    <p role="status" className={styles.opening}>
      {t('opening')}
    </p>
  );
}
