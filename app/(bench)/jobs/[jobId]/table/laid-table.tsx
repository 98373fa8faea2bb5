'use client';

import { TheLine } from '@/components/line/the-line';
import { LayoutTable, type LayoutTableProps } from '@/components/table/layout-table';

/** The table with the line along its top. */
export function LaidTable(props: Omit<LayoutTableProps, 'href' | 'line'>) {
  return <LayoutTable {...props} href={pictureAddress} line={(view) => <TheLine {...view} href={pictureAddress} />} />;
}

/** Where the small copy of a picture is; the original never comes to the browser. */
function pictureAddress(sha256: string): string {
  return `/api/art/${sha256}/proxy.webp`;
}
