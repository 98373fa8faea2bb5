import { describe, expect, it } from 'vitest';
import { textMessageAddress } from '@/components/send/text-message-address';

describe('the address of a text message', () => {
  // RFC 5724, section 2.5 (from memory): sms:+15105550101?body=hello%20there
  it('is written as the standard writes it', () => {
    expect(textMessageAddress('+1 (510) 555-0101', 'hello there')).toBe('sms:+15105550101?body=hello%20there');
  });

  it('gives back its words whatever they hold', () => {
    const words = 'Otterbank & Co: 100 % “Léa’s tees”? http://localhost:3000/proof/a_b-c#d\nsecond line';
    const body = textMessageAddress('555 0142', words).split('?body=')[1] ?? '';
    expect(decodeURIComponent(body)).toBe(words);
    expect(body).not.toMatch(/[&?#\s]/);
  });

  it('asks for whom where no number is known', () => {
    expect(textMessageAddress(null, 'hello')).toBe('sms:?body=hello');
  });
});
