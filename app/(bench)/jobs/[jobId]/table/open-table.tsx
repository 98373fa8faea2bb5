'use client';

import dynamic from 'next/dynamic';
import { useTranslations } from 'use-intl';
import type { LayoutTableProps } from '@/components/table/layout-table';
import styles from './open-table.module.css';

// The table draws on canvases and measures the window: there is nothing of it to make on the server.
const LaidTable = dynamic(() => import('./laid-table').then(({ LaidTable: Laid }) => Laid), {
  ssr: false,
  loading: Opening,
});

/** The layout table, once the browser has what it draws with. */
export function OpenTable(props: Omit<LayoutTableProps, 'href' | 'line'>) {
  return <LaidTable {...props} />;
}

function Opening() {
  const t = useTranslations('table');
  return (
    <p role="status" className={styles.opening}>
      {t('opening')}
    </p>
  );
}
