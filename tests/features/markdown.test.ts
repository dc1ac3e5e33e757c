import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeBlock, codeSpan, escapeMarkdown } from '../../server/features/markdown.ts';

const unescaped = (text: string): string => text.replace(/\\([!-/:-@[-`{-~])/g, '$1');

describe('text of the user as Markdown', () => {
  test.each([
    ['*bold* and _thin_', '\\*bold\\* and \\_thin\\_'],
    ['<img src=x onerror=alert(1)>', '\\<img src=x onerror=alert(1)\\>'],
    ['[click](command:evil)', '\\[click\\](command:evil)'],
    ['![x](http://a.b)', '\\!\\[x\\](http\\://a.b)'],
    ['see www.a.b', 'see www\\.a.b'],
    ['# head', '\\# head'],
    ['- item', '\\- item'],
    ['1. item', '1\\. item'],
    ['0.15 m', '0.15 m'],
    ['&lt;', '\\&lt;'],
    ['two\nlines', 'two lines'],
  ])('%s', (text, expected) => {
    expect(escapeMarkdown(text)).toBe(expected);
  });

  // CommonMark 0.31.2, section 2.4: a backslash before ASCII punctuation shows that mark and nothing else.
  test('nothing is lost, and every mark that could begin something is escaped', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const escaped = escapeMarkdown(text);
        expect(unescaped(escaped)).toBe(unescaped(unescapedOnce(text)));
        expect(escaped.replace(/\\[!-/:-@[-`{-~]/g, '')).not.toMatch(/[\\`*_[\]#!|<>~&]/);
      }),
    );
  });

  const unescapedOnce = (text: string): string => unescaped(escapeMarkdown(text));

  test('a code span holds backticks', () => {
    expect(codeSpan('a ` b')).toBe('`` a ` b ``');
    expect(codeSpan('V = A h')).toBe('`V = A h`');
    expect(codeSpan('')).toBe('');
  });

  test('a block of code cannot be left from within', () => {
    expect(codeBlock('```\n<b>')).toBe('````drillhand\n```\n<b>\n````');
  });
});
