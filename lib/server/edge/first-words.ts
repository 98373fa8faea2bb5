import type { prepareFirstVisit } from '../shop/first-visit';

type FirstVisit = Awaited<ReturnType<typeof prepareFirstVisit>>;

/** What the terminal says once the server listens. */
export function firstWords(publicUrl: string, visit: FirstVisit): readonly string[] {
  const address = `Yokemark is at ${publicUrl}`;
  switch (visit.state) {
    case 'open':
      return [address];
    case 'setUp':
      return [address, `Nobody has set up the shop yet. Open that address and give it this code: ${visit.code}`];
    case 'secretsLost':
      return [
        address,
        'The secrets of this shop were gone, so new ones were made: every link sent to a customer has stopped working, and ' +
          'everybody has to sign in again. If you have a backup of the secrets file, stop the server and put it back.',
      ];
  }
}
