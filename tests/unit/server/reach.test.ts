import { describe, expect, it } from 'vitest';
import { reach } from '@/lib/server/links/reach';

describe('the reach of an address', () => {
  it.each([
    'http://localhost:3000',
    'http://shop.localhost',
    'http://127.0.0.1:3000',
    'http://127.8.9.10',
    'http://0.0.0.0:3000',
    'http://[::1]:3000',
    'http://[::]:3000',
    'http://[::ffff:127.0.0.1]:3000',
    'http://2130706433', // 127.0.0.1 written as one number: URL Standard, section 3.5
  ])('is this computer for %s', (url) => {
    expect(reach(url)).toBe('thisComputer');
  });

  // The first and the last address of each block, from the RFCs named beside the blocks.
  it.each([
    'http://10.0.0.0',
    'http://10.255.255.255',
    'http://172.16.0.0',
    'http://172.31.255.255',
    'http://192.168.0.10:3000',
    'http://169.254.1.1',
    'http://100.64.0.1',
    'http://100.127.255.255',
    'http://[fe80::1]',
    'http://[fd12:3456:789a::1]',
    'http://[::ffff:192.168.1.1]',
    'http://press-pc.local:3000',
    'http://PRESS-PC.LOCAL.:3000',
    'http://press-pc:3000',
    'http://press.home.arpa',
    'http://press.internal',
    'http://press.lan',
    'http://press.test',
  ])('is this network for %s', (url) => {
    expect(reach(url)).toBe('thisNetwork');
  });

  it.each([
    'https://proofs.example.org',
    'https://local.example.org',
    'https://localhost.example.org',
    'http://9.255.255.255',
    'http://11.0.0.0',
    'http://172.15.255.255',
    'http://172.32.0.0',
    'http://192.167.255.255',
    'http://192.169.0.0',
    'http://100.63.255.255',
    'http://100.128.0.0',
    'http://128.0.0.1',
    'http://[2001:db8::1]',
    'http://[fec0::1]',
    'http://[::ffff:203.0.113.5]',
  ])('is everywhere for %s', (url) => {
    expect(reach(url)).toBe('everywhere');
  });
});
