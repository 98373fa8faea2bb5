import { randomInt } from 'node:crypto';
import { createInterface } from 'node:readline/promises';
import { Writable } from 'node:stream';
import { passwordLimits } from '../auth/password-rules';
import { resetPassword } from '../auth/reset-password';
import { closeDatabase, reader } from '../db/database';
import { EnvironmentError } from '../env/environment';

// npm run reset-password -- [mail address]
//
// For a shop without mail: whoever sits at its computer gives a maker a new password. Asks for one on a terminal, and makes
// one up when none is typed or nobody is there to ask.

const letters = 'abcdefghjkmnpqrstuvwxyz23456789';

/** Twenty characters of 31 that are not taken for one another: 99 bits. */
function madeUpPassword(): string {
  const made = Array.from({ length: 20 }, () => letters[randomInt(letters.length)]).join('');
  return made.replace(/(.{5})(?=.)/g, '$1-');
}

/** Asks without showing what is typed. */
async function askHidden(question: string): Promise<string> {
  process.stdout.write(question);
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  const terminal = createInterface({ input: process.stdin, output: nowhere, terminal: true });
  const typed = await terminal.question('');
  terminal.close();
  process.stdout.write('\n');
  return typed;
}

const sentences = {
  noSuchMaker: 'Nobody here signs in with that address.',
  tooShort: `That password is too short: at least ${passwordLimits.min} characters.`,
  tooLong: `That password is too long: at most ${passwordLimits.max} characters.`,
  tooCommon: 'That password is one of the first that anybody would try. Choose another.',
  aName: 'That password is a name that others know. Choose another.',
} as const;

async function chooseEmail(): Promise<string | null> {
  const [given] = process.argv.slice(2);
  if (given) return given;
  const makers = await reader().user.findMany({ select: { email: true }, orderBy: { createdAt: 'asc' } });
  const [only] = makers;
  if (only && makers.length === 1) return only.email;
  console.error(
    makers.length === 0
      ? 'Nobody works here yet: set up the shop in the browser first.'
      : `Say whose: npm run reset-password -- ADDRESS, one of ${makers.map(({ email }) => email).join(', ')}`,
  );
  return null;
}

async function run(): Promise<number> {
  const email = await chooseEmail();
  if (!email) return 1;
  const typed = process.stdin.isTTY
    ? await askHidden(`New password for ${email} (leave it empty to have one made up): `)
    : '';
  const password = typed || madeUpPassword();
  const reset = await resetPassword(email, password);
  if (!reset.ok) {
    console.error(sentences[reset.reason]);
    return 1;
  }
  console.log(typed ? `The password for ${email} is changed.` : `The new password for ${email} is ${password}`);
  console.log('Every session of theirs has ended; sign in with it.');
  return 0;
}

try {
  process.exitCode = await run();
} catch (error) {
  console.error(error instanceof EnvironmentError ? error.message : error);
  process.exitCode = 1;
} finally {
  await closeDatabase();
}
