/**
 * The address that opens a device's own message app with the words filled in (RFC 5724, section 2.2). A number is written
 * in digits with an optional plus; without one the app asks for whom.
 */
export function textMessageAddress(phone: string | null, words: string): string {
  const digits = (phone ?? '').replace(/[^\d+]/g, '');
  return `sms:${digits}?body=${encodeURIComponent(words)}`;
}
