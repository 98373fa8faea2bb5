declare const signedIn: unique symbol;

export type MakerRole = 'owner' | 'helper';

/** Proof that a request comes from somebody who works in the shop. Only the gate in `maker.ts` makes one. */
export interface MakerAccess {
  readonly [signedIn]: true;
  readonly userId: string;
  readonly role: MakerRole;
  readonly name: string;
  readonly email: string;
}

/** The same before it is proven. */
export type MakerAccessFields = Omit<MakerAccess, typeof signedIn>;
