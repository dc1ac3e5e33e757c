import { describe, expect, it } from 'vitest';
import { parseLines, reparse } from '../../grammar/index.ts';
import { analysisOf } from '../../server/analysis/analysis.ts';
import type { Settings } from '../../server/analysis/snapshot.ts';
import type { Stages } from '../../server/analysis/stages.ts';
import { buildLog } from '../../server/model/index.ts';
import { limitsFor } from '../../server/packs/index.ts';
import { computeRecord } from '../../server/record/index.ts';
import type { Finding } from '../../server/rules/rule.ts';

const settings: Settings = { packs: [], severities: {}, today: '2026-06-01' };

const one: Finding = { rule: 'a-rule', severity: 'warning', span: { line: 1, start: 0, end: 4 }, message: 'a finding' };

const sound: Stages = {
  parse: parseLines,
  reparse,
  build: buildLog,
  limits: (packs) => limitsFor(packs).limits,
  record: computeRecord,
  rules: () => [one],
};

const fails = (): never => {
  throw new Error('a fault of the program');
};

const lines = ['well A', 'hole', '0 - 30 152', 'strata', '0 - 30 clay'];

describe('one version of a log', () => {
  it('has nothing computed before it is asked for, and each thing once', () => {
    const ran: string[] = [];
    const counted: Stages = {
      ...sound,
      build: (tree) => {
        ran.push('build');
        return sound.build(tree);
      },
      record: (log, limits) => {
        ran.push('record');
        return sound.record(log, limits);
      },
      rules: (known) => {
        ran.push('rules');
        return [{ ...one, message: known.record().log.header.well?.text ?? '' }];
      },
    };
    const snapshot = analysisOf(counted).analyse(lines, settings, 3);
    expect(ran).toEqual([]);
    expect(snapshot.findings.map(({ message }) => message)).toEqual(['A']);
    expect(snapshot.findings).toBe(snapshot.findings);
    expect(snapshot.record.log).toBe(snapshot.log);
    expect(ran).toEqual(['build', 'record', 'rules']);
    expect(snapshot.version).toBe(3);
  });

  it('is checked against the packs of the settings and of the file', () => {
    const asked: (readonly string[])[] = [];
    const stages: Stages = {
      ...sound,
      limits: (packs) => {
        asked.push(packs);
        return {};
      },
    };
    const snapshot = analysisOf(stages).analyse(['rules general other'], { ...settings, packs: ['mine'] }, 1);
    expect(snapshot.findings).toEqual([one]);
    expect(asked).toEqual([['mine', 'general', 'other']]);
  });
});

describe('a fault of the program', () => {
  const faultOf = (stages: Stages) => analysisOf(stages).analyse(lines, settings, 1);

  it('in the parser leaves the lines unread', () => {
    const snapshot = faultOf({ ...sound, parse: fails });
    expect(snapshot.tree.lines.map(({ text, row }) => [text, row])).toEqual(lines.map((text) => [text, null]));
    expect(snapshot.findings.map(({ rule }) => rule)).toEqual(['internal-error', 'a-rule']);
    expect(snapshot.findings[0]?.message).toBe(
      'reading the lines failed: a fault of the program; what needs it is missing here, the rest was checked',
    );
  });

  it('in the model leaves an empty log', () => {
    const snapshot = faultOf({ ...sound, build: fails });
    expect(snapshot.log.hole).toEqual([]);
    expect(snapshot.record.log).toBe(snapshot.log);
    expect(snapshot.findings.map(({ rule }) => rule)).toEqual(['internal-error', 'a-rule']);
  });

  it('in the limits leaves none', () => {
    const rules: Stages['rules'] = ({ limits }) => [{ ...one, message: String(Object.keys(limits).length) }];
    const snapshot = faultOf({ ...sound, limits: fails, rules });
    expect(snapshot.findings.map(({ message }) => message).at(-1)).toBe('0');
    expect(snapshot.findings).toHaveLength(2);
  });

  it('in the record leaves the log', () => {
    const snapshot = faultOf({ ...sound, record: fails });
    expect(snapshot.record.figures).toEqual([]);
    expect(snapshot.record.log.hole).toHaveLength(1);
    expect(snapshot.findings.map(({ rule }) => rule)).toEqual(['internal-error', 'a-rule']);
  });

  it('in the rules leaves the record', () => {
    const snapshot = faultOf({ ...sound, rules: fails });
    expect(snapshot.record.log.strata).toHaveLength(1);
    expect(snapshot.findings.map(({ rule }) => rule)).toEqual(['internal-error']);
  });

  it('in reading an edit is mended by reading the whole', () => {
    const { analyse, update } = analysisOf({ ...sound, reparse: fails });
    const edit = { first: 0, removed: 1, inserted: ['well B'] };
    const snapshot = update(analyse(lines, settings, 1), edit, settings, 2);
    expect(snapshot.log.header.well?.text).toBe('B');
    expect(snapshot.findings.map(({ rule }) => rule)).toEqual(['internal-error', 'a-rule']);
  });
});
