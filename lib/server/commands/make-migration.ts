import { makeMigration } from '../db/make-migration';

// npm run make-migration -- what-changed

const [name = ''] = process.argv.slice(2);
if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name)) {
  console.error('Say in a few words what changed, such as: npm run make-migration -- add-suppliers');
  process.exitCode = 1;
} else {
  const written = await makeMigration(name, new Date());
  console.log(written.length === 0 ? 'The schema has not changed.' : written.join('\n'));
}
