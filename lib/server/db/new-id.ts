import { v7 } from 'uuid';

/** A new id for a row: UUIDv7 (RFC 9562, section 5.7), made by the app so that every database has the same kind. */
export function newId(): string {
  return v7();
}
