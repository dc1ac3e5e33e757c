import { expect, test } from 'vitest';
import { canonical, fileName, folderOf, foldersAbove, inFolder, nameWithin } from '../../server/lsp/address.ts';

test('one file has one address, however an editor spells it', () => {
  const plain = canonical('file:///home/a%20b/(1).well');
  expect(canonical('file:///home/a b/%281%29.well')).toBe(plain);
  expect(canonical('FILE:///home/a%20b/(1).well')).toBe(plain);
  expect(canonical('file:///c%3A/logs/')).toBe(canonical('file:///c:/logs'));
});

test('a wrong percent sign does no harm', () => {
  expect(canonical('file:///home/100%.well')).toBe('file:///home/100%25.well');
});

test('folders are walked up to the topmost', () => {
  expect(foldersAbove('file:///home/logs/a.well')).toEqual(['file:///home/logs', 'file:///home', 'file://']);
  expect(folderOf('untitled:Untitled-1')).toBeNull();
});

test('names are read and written', () => {
  expect(inFolder('file:///home', 'a b.well')).toBe('file:///home/a%20b.well');
  expect(fileName('file:///home/a%20b.well')).toBe('a b.well');
  expect(nameWithin('file:///home/deep%20er/a.well', 'file:///home')).toBe('deep er/a.well');
});
