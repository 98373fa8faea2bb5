'use client';

import './globals.css';
import { defaultLocale } from '@/lib/messages/locales';
import BrokenPage from './error';

type BrokenSiteProps = { error: Error & { digest?: string }; reset: () => void };

export default function BrokenSite(props: BrokenSiteProps) {
  return (
    <html lang={defaultLocale}>
      <body>
        <BrokenPage {...props} />
      </body>
    </html>
  );
}
