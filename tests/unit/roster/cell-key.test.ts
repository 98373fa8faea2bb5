import { expect, it } from 'vitest';
import { cellKey } from '@/components/roster/cell-key';

const press = (key: string, held: { shiftKey?: boolean; ctrlKey?: boolean } = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});
const all = { selectionStart: 0, selectionEnd: 3, value: 'Mia' };
const inside = { selectionStart: 1, selectionEnd: 1, value: 'Mia' };
const atEnd = { selectionStart: 3, selectionEnd: 3, value: 'Mia' };

it('leads to the neighbours of a cell, left and right only from the ends of what stands in it', () => {
  expect(cellKey(press('Enter'), inside, true)).toBe('down');
  expect(cellKey(press('Enter', { shiftKey: true }), inside, true)).toBe('up');
  expect(cellKey(press('ArrowDown'), inside, false)).toBe('down');
  expect(cellKey(press('ArrowRight'), all, false)).toBe('right');
  expect(cellKey(press('ArrowRight'), atEnd, true)).toBe('right');
  expect(cellKey(press('ArrowLeft'), atEnd, true)).toBeNull();
  expect(cellKey(press('ArrowRight'), inside, true)).toBeNull();
  expect(cellKey(press('a'), all, false)).toBeNull();
});

it('takes back the last change, but leaves what is being typed to the text itself', () => {
  expect(cellKey(press('z', { ctrlKey: true }), all, false)).toBe('undo');
  expect(cellKey(press('Z', { ctrlKey: true, shiftKey: true }), all, false)).toBe('redo');
  expect(cellKey(press('y', { ctrlKey: true }), all, false)).toBe('redo');
  expect(cellKey(press('z', { ctrlKey: true }), atEnd, true)).toBeNull();
  expect(cellKey(press('Escape'), atEnd, true)).toBe('revert');
  expect(cellKey(press('Escape'), all, false)).toBeNull();
});
