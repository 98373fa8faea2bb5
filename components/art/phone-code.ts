/** A code that lets a phone hand pictures over to a job for a while. */
export type PhoneCode = {
  readonly url: string;
  readonly expiresAt: Date;
  /** The address as a QR code: one path in squares of one unit, quiet zone included. */
  readonly qr: { readonly size: number; readonly d: string };
  /** How far the address carries; a phone cannot open one that is good on this computer only. */
  readonly reach: 'thisComputer' | 'thisNetwork' | 'everywhere';
};
