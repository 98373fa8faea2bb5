import { openDatabase } from '@/lib/server/db/open-database';

// One of two processes that add to the same row: reads the number, waits a little, writes it back one higher.

const [url = '', times = ''] = process.argv.slice(2);
const database = openDatabase(url);
for (let time = 0; time < Number(times); time += 1) {
  await database.write(async (tx) => {
    const { name } = await tx.customer.findUniqueOrThrow({ where: { id: 'counter' } });
    await new Promise((resolve) => setImmediate(resolve));
    await tx.customer.update({ where: { id: 'counter' }, data: { name: String(Number(name) + 1) } });
  });
}
await database.close();
