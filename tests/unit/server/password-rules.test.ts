import { describe, expect, it } from 'vitest';
import { passwordFault, passwordLimits } from '@/lib/server/auth/password-rules';

const names = ['Marit Otterbank', 'Saltmarsh Prints', 'marit@otterbank.example.org'];
const fault = (password: string) => passwordFault(password, names);

describe('a password', () => {
  // NIST SP 800-63B, section 5.1.1.2: at least 8 characters, at least 64 accepted, any character, no rules on their kind.
  it.each([
    'three herons and a boat',
    'alllowercaseletters',
    '4839201758',
    'ångström ægir 山 🦦🦦',
    '      spaces count      ',
    `${'long '.repeat(12)}enough`,
    'k3v9'.repeat(16),
  ])('is taken: %j', async (password) => {
    expect(await fault(password)).toBeNull();
  });

  it('is measured in characters, not in bytes or code units', async () => {
    expect(passwordLimits.max).toBeGreaterThanOrEqual(64);
    expect(await fault('🦦🐟🦆🐚🌊⛵🪶🏖🌾')).toBe('tooShort');
    expect(await fault('🦦🐟🦆🐚🌊⛵🪶🏖🌾🌙')).toBeNull();
    expect(await fault('ab 🦦'.repeat(40))).toBe('tooLong');
  });

  // The same section: refuse what is commonly used, dictionary words, repetitive or sequential characters, and what has to
  // do with the service or the person.
  it.each([
    'qwertyuiop',
    'QWERTYUIOP',
    'ｐａｓｓｗｏｒｄ１２３',
    'Password123!',
    '123password123',
    '1234567890',
    'iloveyou2',
    'aaaaaaaaaaaa',
    'abababababab',
    'abcdefghijkl',
    '9876543210',
  ])('is refused as one that is tried first: %j', async (password) => {
    expect(await fault(password)).toBe(password.length < passwordLimits.min ? 'tooShort' : 'tooCommon');
  });

  it.each(['Marit Otterbank', 'maritotterbank', 'OTTERBANK-2026', 'saltmarsh prints!', 'marit@otterbank.example.org'])(
    'is refused as a name: %j',
    async (password) => {
      expect(await fault(password)).toBe('aName');
    },
  );
});
