import type { ReadStream } from 'node:fs';
import { join } from 'node:path';
import { environment } from '../env/environment';
import { type FileStore, openStore, type StoredFile } from './file-store';

const shelves = new Map<string, FileStore>();

function shelf(folder: string): FileStore {
  const known = shelves.get(folder) ?? openStore(folder);
  shelves.set(folder, known);
  return known;
}

/** Art as it was uploaded and as it is drawn: what a shop must not lose. */
export function artFiles(): FileStore {
  return shelf(environment().filesDir);
}

/** Pictures drawn from sealed scenes: they can be drawn again, and are erased with the names they show. */
export function pictureFiles(): FileStore {
  return shelf(join(environment().filesDir, 'pictures'));
}

/** Keeps content under its SHA-256; content that is there already is kept once. */
export function storeFile(content: Uint8Array | AsyncIterable<Uint8Array>): Promise<StoredFile> {
  return artFiles().store(content);
}

/** Stored content. Throws where there is none, and where it no longer has its SHA-256. */
export function readFile(sha256: string): Promise<Uint8Array> {
  return artFiles().read(sha256);
}

/** Whether content with this SHA-256 is stored. */
export function fileExists(sha256: string): Promise<boolean> {
  return artFiles().has(sha256);
}

/** Stored content as a stream. */
export function openFile(sha256: string): ReadStream {
  return artFiles().openFile(sha256);
}
