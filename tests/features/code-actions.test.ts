import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analysis/index.ts';
import { type Action, fixAllAction, quickFixActions } from '../../server/features/code-actions.ts';
import { edited, marked, settings, snapshotOf } from './fixture.ts';

const actionsAt = (text: string): { actions: readonly Action[]; lines: readonly string[] } => {
  const { snapshot, at, lines } = marked(text);
  return { actions: quickFixActions(snapshot, { first: at, last: at }), lines };
};

describe('quick fixes', () => {
  test('the fixes of the finding under the cursor', () => {
    const { actions, lines } = actionsAt('strata\n  0 - 3 cla|q');
    const fix = actions.find(({ title }) => title.includes('clay'));
    expect(fix && edited(lines, fix.edits)).toBe('strata\n  0 - 3 clay');
  });

  test('none elsewhere', () => {
    expect(actionsAt('str|ata\n  0 - 3 claq').actions).toEqual([]);
  });

  test('a selection takes in every finding that it touches', () => {
    const snapshot = snapshotOf('strata\n  0 - 3 claq\n  - 4 sanq');
    const found = quickFixActions(snapshot, { first: { line: 0, column: 0 }, last: { line: 2, column: 0 } });
    expect(new Set(found.map(({ finding }) => finding?.span.line))).toEqual(new Set([1]));
  });
});

describe('allow', () => {
  const allowed = (text: string): string => {
    const { actions, lines } = actionsAt(text);
    const allow = actions.find(({ title }) => title.startsWith('Allow'));
    if (allow === undefined) throw new Error('not offered');
    return edited(lines, allow.edits);
  };

  test('stands at the end of the line, its reason an open question', () => {
    expect(allowed('strata\n  0 - 3 cla|q  ')).toBe('strata\n  0 - 3 claq  # allow unknown-term: ?');
  });

  test('stands on a line of its own above one that has a comment', () => {
    expect(allowed('strata\n  0 - 3 cla|q  # seen twice')).toBe(
      'strata\n  # allow unknown-term: ?\n  0 - 3 claq  # seen twice',
    );
  });

  test('silences the finding', () => {
    const lines = allowed('strata\n  0 - 3 cla|q').split('\n');
    const rules = analyse(lines, settings, 1).findings.map(({ rule }) => rule);
    expect(rules).not.toContain('unknown-term');
  });
});

describe('a fix in a table', () => {
  const fixed = (text: string, words: string): string => {
    const { snapshot, at, lines } = marked(text);
    const action = quickFixActions(snapshot, { first: at, last: at }).find(({ title }) => title.includes(words));
    return action === undefined ? '' : edited(lines, action.edits);
  };

  test('keeps the columns of the lines that it changes, the remark and the comment among them', () => {
    const log = 'strata\n  0   - 3.8     clay      ; soft  # KB\n  4.1| - 12.25   sand      ; wet';
    expect(fixed(log, 'about halfway')).toBe(
      'strata\n  0   - ~3.95   clay      ; soft  # KB\n  ~3.95 - 12.25 sand      ; wet',
    );
    expect(fixed(log, 'End the line above')).toBe(
      'strata\n  0   - 4.1     clay      ; soft  # KB\n  4.1 - 12.25   sand      ; wet',
    );
  });

  test('leaves the line as it is where it puts one in above', () => {
    expect(fixed('strata\n\t0 - 3.8 clay\n\t4.1| - 12   sand', 'Log the gap')).toBe(
      'strata\n\t0 - 3.8 clay\n\t- 4.1  ?\n\t4.1 - 12   sand',
    );
  });
});

describe('every safe fix', () => {
  test('mends spellings and leaves what needs a look', () => {
    const lines = ['casng 0 - 7.2 steel 168.3', '  shoo 7.2', '  grout 0 - 7,2 neat cement'];
    const all = fixAllAction(analyse(lines, settings, 1));
    const mended = all && edited(lines, all.edits);
    expect(mended).toContain('casing 0 - 7.2');
    expect(mended).toContain('shoe 7.2');
    expect(mended).toContain('7,2');
  });

  test('never writes over another', () => {
    const all = fixAllAction(snapshotOf('casng 0 - 7.2 steel\n  shoo 7.2\n  shoo 7.2'));
    const spans = (all?.edits ?? []).map(({ span }) => `${span.line}:${span.start}`);
    expect(new Set(spans).size).toBe(spans.length);
  });

  test('is not offered where there is nothing to mend', () => {
    expect(fixAllAction(snapshotOf('strata\n  0 - 3 clay'))).toBeNull();
  });
});
