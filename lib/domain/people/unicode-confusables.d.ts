declare module 'unicode-confusables' {
  /** Each character put in place of what it is confused with, by the table of UTS #39. */
  export function rectifyConfusion(text: string): string;
}
