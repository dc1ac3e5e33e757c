import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../server/analysis/index.ts';
import type { Settings } from '../../server/analysis/snapshot.ts';
import { lineTextOf } from '../../server/lsp/documents.ts';
import { noNumbers, outsideOf } from './inside.ts';
import { file } from './material.ts';
import { files, patience } from './runs.ts';

const settings: Settings = { packs: [], severities: {}, today: '2026-06-01' };

/** Far more than any of these small files needs, in milliseconds. */
const hangs = 5000;

test(
  `${files} files of random bytes, mangled samples and odd lines: read without a fault, in time, all places inside`,
  patience,
  () => {
    fc.assert(
      fc.property(file, (text) => {
        const began = performance.now();
        const snapshot = analyse(lineTextOf(text).lines, settings, 1);
        expect(snapshot.findings.filter(({ rule }) => rule === 'internal-error')).toEqual([]);
        expect(outsideOf(snapshot)).toEqual([]);
        expect(noNumbers(snapshot)).toEqual([]);
        expect(performance.now() - began).toBeLessThan(hangs);
      }),
      { numRuns: files },
    );
  },
);
