import type { SqlDriverAdapterFactory } from '@prisma/driver-adapter-utils';

/** Connections to a PostgreSQL database; a reading one is refused any write by the server itself. */
export function postgresqlAdapter(url: string, access: 'read' | 'write' | 'migrate'): SqlDriverAdapterFactory {
  return {
    provider: 'postgres',
    adapterName: '@prisma/adapter-pg',
    async connect() {
      const { PrismaPg } = await import('@prisma/adapter-pg');
      const readOnly = access === 'read' ? '-c default_transaction_read_only=on' : undefined;
      return new PrismaPg({ connectionString: url, options: readOnly }).connect();
    },
  };
}
