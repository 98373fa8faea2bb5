/** Where the bench finds the small copy of a picture, by the SHA-256 of the picture. */
export function proxyAddress(sha256: string): string {
  return `/api/art/${sha256}/proxy.webp`;
}
