import broken from './en/broken.json';

/** The words of a page that stopped working, by themselves: that page must load as little as it can. */
export const brokenWords = broken;
