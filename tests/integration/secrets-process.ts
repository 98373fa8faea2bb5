import { secrets } from '@/lib/server/secrets/secrets';

// One of several processes that start at once; prints which secret it works with.

process.stdout.write(secrets().authSecret);
