import { describe, expect, test } from 'vitest';
import type { Settings } from '../../server/analysis/snapshot.ts';
import type { Files } from '../../server/lsp/files.ts';
import { readSettings, settingsFor } from '../../server/lsp/settings.ts';
import { Workspace } from '../../server/lsp/workspace.ts';

const folder = 'file:///fen';
const names = ['a.well', 'b.well', 'c.well'];

const gapped = 'strata\n  0 - 4 clay\n  5 - 9 sand\n';

/** A folder of three logs on a disk that counts how often it is read, and what the editor's settings say. */
function fen(text = gapped) {
  const reads: string[] = [];
  const disk: Files = {
    list: async (uri) => (uri === folder ? names.map((name) => ({ name, isFolder: false })) : []),
    read: async (uri) => {
      if (uri.endsWith('.well')) reads.push(uri);
      return uri.endsWith('.well') ? text : null;
    },
  };
  let section: unknown = {};
  let today = '2026-06-01';
  const settings = async (uri: string): Promise<Settings> =>
    settingsFor(readSettings(section), workspace.files.besideOf(uri), today);
  const workspace = new Workspace(disk, {
    open: () => null,
    settingsFor: settings,
    onChecksChanged: () => {},
    onChanged: () => {},
    fail: (what, error) => {
      throw new Error(what, { cause: error });
    },
  });
  const reread = async (change: () => void): Promise<number> => {
    await workspace.whenRead();
    reads.length = 0;
    change();
    workspace.checkAnew();
    await workspace.whenRead();
    return reads.length;
  };
  return {
    workspace,
    rereadAfter: (told: unknown) =>
      reread(() => {
        section = told;
      }),
    rereadOn: (day: string) =>
      reread(() => {
        today = day;
      }),
  };
}

describe('the logs of a folder after a change of settings', () => {
  test('are not read again for what is only shown', async () => {
    const { workspace, rereadAfter } = fen();
    await workspace.open([folder]);
    expect(await rereadAfter({ inlayHints: { thickness: false }, codeLens: { totals: false } })).toBe(0);
    expect(workspace.logs()).toHaveLength(names.length);
  });

  test('are read again, each once, for what they are checked by', async () => {
    const { workspace, rereadAfter } = fen();
    await workspace.open([folder]);
    expect(await rereadAfter({ rules: { severity: { 'strata-gap': 'off' } } })).toBe(names.length);
    expect(await rereadAfter({ rules: { severity: { 'strata-gap': 'off' } }, inlayHints: {} })).toBe(0);
    expect(await rereadAfter({ rules: { packs: ['texas-16-76'] } })).toBe(names.length);
  });

  test('are read again on another day, which due dates are counted from', async () => {
    const { workspace, rereadOn } = fen();
    await workspace.open([folder]);
    expect(await rereadOn('2026-06-02')).toBe(names.length);
  });
});

test('a log is known by every well that it names', async () => {
  const { workspace } = fen('well A\nreplaces B\nnested C\ntest pump 40 L/min\n  observed D, r 9\n');
  await workspace.open([folder]);
  await workspace.whenRead();
  expect(workspace.logs()[0]?.others.map(({ text }) => text)).toEqual(['B', 'C', 'D']);
});
