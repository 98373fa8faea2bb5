import '@fontsource/atkinson-hyperlegible-next/400.css';
import '@fontsource/atkinson-hyperlegible-next/700.css';
import '@fontsource/atkinson-hyperlegible-mono/400.css';
import '@fontsource/atkinson-hyperlegible-mono/700.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

// Every page carries the nonce of its own request, so none can be made ahead of time.
export const dynamic = 'force-dynamic';

export function generateMetadata(): Metadata {
  const name = translatorFor(defaultLocale, 'site')('name');
  return {
    title: { default: name, template: `%s · ${name}` },
    robots: { index: false, follow: false },
    formatDetection: { telephone: false, email: false, address: false, date: false },
  };
}

export const viewport: Viewport = { width: 'device-width', initialScale: 1, themeColor: '#f1ebdc' };

export default function RootLayout({ children }: { children: ReactNode }) {
  return (
    <html lang={defaultLocale}>
      <body>{children}</body>
    </html>
  );
}
