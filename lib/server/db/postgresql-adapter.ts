import type { SqlDriverAdapterFactory, SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import type { DatabaseError } from 'pg';

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

/**
 * Connections for the schema engine. The driver adapter cuts a script at every semicolon, also at one inside a text, and
 * sends each piece by itself, so a migration that fails would stay half done; here the server gets a script whole, and
 * takes all of it or nothing (postgresql.org/docs/15/protocol-flow.html, section 55.2.2.1).
 */
export async function migratingPostgresql(url: string): Promise<SqlMigrationAwareDriverAdapterFactory> {
  const [{ PrismaPg }, { DriverAdapterError }] = await Promise.all([
    import('@prisma/adapter-pg'),
    import('@prisma/driver-adapter-utils'),
  ]);
  const factory = new PrismaPg({ connectionString: url });
  // In the driver adapter's own form, so that the engine passes on what the server said.
  const asAdapterError = (error: unknown) => {
    const { code, severity, message, detail, column, hint } = error as DatabaseError;
    return new DriverAdapterError({
      kind: 'postgres',
      code: code ?? 'N/A',
      severity: severity ?? 'N/A',
      message,
      detail,
      column,
      hint,
    });
  };
  const wholeScripts = async (connecting: ReturnType<typeof factory.connect>) => {
    const adapter = await connecting;
    adapter.executeScript = async (script) => {
      try {
        await adapter.underlyingDriver().query(script);
      } catch (error) {
        throw asAdapterError(error);
      }
    };
    return adapter;
  };
  return {
    provider: factory.provider,
    adapterName: factory.adapterName,
    connect: () => wholeScripts(factory.connect()),
    connectToShadowDb: () => wholeScripts(factory.connectToShadowDb()),
  };
}
