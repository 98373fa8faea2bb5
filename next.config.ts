import type { NextConfig } from 'next';

/** Headers that do not depend on the request; those that do (the policy with its nonce) are set in proxy.ts. */
const everywhere = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
  {
    key: 'Permissions-Policy',
    value:
      'accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), microphone=(), payment=(), usb=()',
  },
];

/** Raw responses (pictures, uploads, documents) need no script, style or frame whatever their bytes turn out to be. */
const rawResponses = [
  {
    key: 'Content-Security-Policy',
    value: "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  },
];

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  devIndicators: false,
  images: { unoptimized: true },
  turbopack: {
    // HarfBuzz asks for these where it runs on a server; in a browser it asks for none of them.
    resolveAlias: Object.fromEntries(
      ['module', 'fs', 'path', 'url'].map((name) => [name, { browser: './components/table/no-node-modules.ts' }]),
    ),
    // The server runs beside its sources, so no list of files to carry elsewhere is needed and a long one does no harm.
    ignoreIssue: [{ path: '**', title: /^Dynamic filesystem access/ }],
  },
  serverExternalPackages: [
    '@prisma/adapter-better-sqlite3',
    '@prisma/adapter-pg',
    '@prisma/client',
    '@prisma/driver-adapter-utils',
    '@prisma/schema-engine-wasm',
    'better-sqlite3',
    'harfbuzzjs',
    'nodemailer',
    'pg',
    'piscina',
    'sharp',
  ],
  experimental: {
    // Typed forms only: files arrive at raw routes that count their own bytes.
    serverActions: { bodySizeLimit: '1mb' },
    // The proxy cuts longer bodies without a word; the edge server refuses them first, with one.
    proxyClientMaxBodySize: '2mb',
  },
  headers: async () => [
    { source: '/:path*', headers: everywhere },
    { source: '/api/:path*', headers: rawResponses },
  ],
};

export default config;
