import { afterEach, describe, expect, it, vi } from 'vitest';
import { closeEverything, onShutdown } from '@/lib/server/edge/on-shutdown';

describe('closing down', () => {
  afterEach(() => vi.restoreAllMocks());

  it('closes what was registered, the last first, and once', async () => {
    const closed: string[] = [];
    onShutdown('database', () => void closed.push('database'));
    onShutdown('workers', async () => void closed.push('workers'));
    await closeEverything();
    await closeEverything();
    expect(closed).toEqual(['workers', 'database']);
  });

  it('closes the rest when one of them fails, and says which', async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => {});
    const closed: string[] = [];
    onShutdown('database', () => void closed.push('database'));
    onShutdown('workers', () => Promise.reject(new Error('stuck')));
    await closeEverything();
    expect(closed).toEqual(['database']);
    expect(said.mock.calls[0]?.[0]).toMatch(/workers/);
  });
});
