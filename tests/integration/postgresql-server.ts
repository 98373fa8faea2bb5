import { execFile, spawn } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

export interface PostgresqlServer {
  readonly url: string;
  stop(): Promise<void>;
}

/** Where PostgreSQL's own programs are: Debian keeps them out of the PATH, one folder a version. Null when there are none. */
export function postgresqlPrograms(): string | null {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [...versions.map((version) => join(debian, version, 'bin')), ...(process.env.PATH ?? '').split(':')];
  return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres'))) ?? null;
}

/** PostgreSQL refuses to run as root; then Debian's user for it does. */
async function otherUser(): Promise<{ uid: number; gid: number } | null> {
  if (process.getuid?.() !== 0) return null;
  const [uid, gid] = await Promise.all([run('id', ['-u', 'postgres']), run('id', ['-g', 'postgres'])]);
  return { uid: Number(uid.stdout), gid: Number(gid.stdout) };
}

/** Starts a new, empty server of its own that listens on a socket in a temporary folder and on no network. */
export async function startPostgresql(programs: string): Promise<PostgresqlServer> {
  const folder = mkdtempSync(join(tmpdir(), 'yokemark-pg-'));
  const user = await otherUser();
  if (user) chownSync(folder, user.uid, user.gid);
  const as = { ...user, cwd: folder, env: { ...process.env, LC_ALL: 'C.UTF-8' } };
  const data = join(folder, 'data');
  const initArgs = ['-D', data, '-U', 'yokemark', '--auth=trust', '--encoding=UTF8', '--no-sync'];
  await run(join(programs, 'initdb'), initArgs, as);

  const server = spawn(
    join(programs, 'postgres'),
    ['-D', data, '-k', folder, '-c', 'listen_addresses=', '-c', 'fsync=off'],
    { ...as, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const ended = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  let log = '';
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.once('exit', (code) => reject(new Error(`PostgreSQL ended with ${code}:\n${log}`)));
    server.stderr?.on('data', (chunk: Buffer) => {
      log += chunk.toString();
      if (log.includes('ready to accept connections')) resolve();
    });
  });

  return {
    url: `postgresql://yokemark@localhost/postgres?host=${encodeURIComponent(folder)}`,
    async stop() {
      // Fast shutdown: postgresql.org/docs/15/server-shutdown.html.
      server.kill('SIGINT');
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
