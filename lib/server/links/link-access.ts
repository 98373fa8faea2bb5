import { z } from 'zod';

/** What the person a link was made for may do with it, and see through it. */
export const linkMaySchema = z.strictObject({
  sign: z.boolean(),
  remark: z.boolean(),
  /** Other people's names, and pictures with names in them. */
  seeNames: z.boolean(),
  /** Hand in pictures, and nothing besides: such a link is passed on freely and opens no revision. */
  upload: z.boolean().optional(),
});
export type LinkMay = Readonly<z.infer<typeof linkMaySchema>>;

declare const opened: unique symbol;

/** Proof that a request came through a link that is good. Only `openLink` makes one. */
export interface LinkAccess {
  readonly [opened]: true;
  readonly linkId: string;
  readonly contactId: string;
  /** Null when the name was never given or was erased. */
  readonly contactName: string | null;
  readonly jobId: string;
  readonly may: LinkMay;
  /** The contacts of the job who must all say yes. */
  readonly mustSign: readonly string[];
}

/** The same before it is proven. */
export type LinkAccessFields = Omit<LinkAccess, typeof opened>;
