/** In characters. NIST SP 800-63B, section 5.1.1.2 asks for at least 8, and to accept at least 64; nothing on their kind. */
export const passwordLimits = { min: 10, max: 128 } as const;

export type PasswordFault = 'tooShort' | 'tooLong' | 'tooCommon' | 'aName';

/** One spelling for all the ways to write the same: composed, in lower case (Unicode NFKC). */
function folded(text: string): string {
  return text.normalize('NFKC').toLowerCase();
}

/** What is left when digits and signs at both ends are taken off: the word somebody dressed up. */
function core(text: string): string {
  return text.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '');
}

function isMonotonous(characters: readonly string[]): boolean {
  if (new Set(characters).size < 4) return true;
  const steps = characters
    .slice(1)
    .map((each, index) => (each.codePointAt(0) ?? 0) - (characters[index]?.codePointAt(0) ?? 0));
  return steps.every((step) => step === 1) || steps.every((step) => step === -1);
}

async function commonPasswords(): Promise<ReadonlySet<string>> {
  // The list of @zxcvbn-ts/language-common, about 49 000 entries. Read only when somebody chooses a password.
  const { dictionary } = await import('@zxcvbn-ts/language-common');
  return new Set(dictionary['passwords-common'].map(String));
}

/**
 * Why a password is not taken; null when it is. It must not be too short, one of those that are tried first, or made of a
 * name that anybody here knows: `names` are the person's, the shop's and the mail address.
 */
export async function passwordFault(password: string, names: readonly string[]): Promise<PasswordFault | null> {
  const text = folded(password);
  const characters = [...text];
  if (characters.length < passwordLimits.min) return 'tooShort';
  if (characters.length > passwordLimits.max) return 'tooLong';
  if (isMonotonous(characters)) return 'tooCommon';

  const letters = (name: string) => folded(name).replace(/[^\p{L}]/gu, '');
  const bare = letters(text);
  const known = names.flatMap((name) => [name, name.split('@')[0] ?? '', ...name.split(/\s+/)]).map(letters);
  if (bare !== '' && known.includes(bare)) return 'aName';

  const common = await commonPasswords();
  return common.has(text) || common.has(core(text)) ? 'tooCommon' : null;
}
