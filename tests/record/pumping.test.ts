import { describe, expect, test } from 'vitest';
import { figureIn, recordOf, valueIn } from './record-of.ts';

// Oude Korendijk, Kruseman and de Ridder, Analysis and Evaluation of Pumping Test Data: 788 m³/d, piezometer at 30 m.
const readings =
  '0.1 .04, 0.25 .08, 0.5 .13, 0.7 .18, 1 .23, 1.4 .28, 1.9 .33, 2.33 .36, 2.8 .39, 3.36 .42, 4 .45, 5.35 .50, ' +
  '6.8 .54, 8.3 .57, 8.7 .58, 10 .60, 13.1 .64, 18 .680, 27 .742, 33 .753, 41 .779, 48 .793, 59 .819, 80 .855, ' +
  '95 .873, 139 .915, 181 .935, 245 .966, 300 .990, 360 1.007, 480 1.050, 600 1.053, 728 1.072, 830 1.088';
const day = 86_400;

describe('an observation well', () => {
  const record = recordOf(
    `test pump 788 m3/d\nobserved OW-1, r 30 m, dd\n${readings.split(', ').join('\n').replaceAll(' .', ' 0.')}`,
  );
  const perDay = (id: string) => (figureIn(record, id).value ?? 0) * day;

  // 385 m²/d and 1.7e-4 over 1 to 10 min (published, from memory); 581 m²/d over 10 min and later (derived).
  test('the window decides, so each tenfold of time is told', () => {
    const line = 'test.1.observed.1.cooper-jacob';
    expect(perDay(`${line}.1-10-min.transmissivity`)).toBeCloseTo(385, 0);
    expect(figureIn(record, `${line}.1-10-min.storativity`).value).toBeCloseTo(1.67e-4, 6);
    expect(figureIn(record, `${line}.1-10-min.transmissivity`).title).toContain('1 min – 10 min');
    expect(perDay(`${line}.100-1000-min.transmissivity`)).toBeGreaterThan(perDay(`${line}.1-10-min.transmissivity`));
  });

  test('speaks for the test where the pumped well was not read', () => {
    expect(perDay('test.1.cooper-jacob.transmissivity')).toBeCloseTo(
      perDay('test.1.observed.1.cooper-jacob.transmissivity'),
      9,
    );
    expect(figureIn(record, 'test.1.specific-capacity').waitsFor).toEqual(['the drawdown while pumping']);
  });

  test('Theis and the line over one window agree within a tenth', () => {
    const ratio = perDay('test.1.theis.transmissivity') / perDay('test.1.cooper-jacob.transmissivity');
    expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
  });
});

describe('the pumped well', () => {
  // Drawdowns made from the formula: s = 0.183 Q / T log10(t / t0), T 10 m²/d, Q 40 L/min, so that the line gives T back.
  const flow = 40 / 60_000;
  const slope = (Math.LN10 * flow) / (4 * Math.PI * (10 / day));
  const drawdown = (minutes: number): number => 3 + slope * Math.log10(minutes);
  const level = (minutes: number): string => `${minutes} ${(5 + drawdown(minutes)).toFixed(6)}`;
  const pumped = `test pump 40 L/min\n0 5\n${[1, 2, 5, 10, 20, 50, 100].map(level).join('\n')}\n`;

  test('gives back the transmissivity, and no storage coefficient', () => {
    const record = recordOf(pumped);
    expect((figureIn(record, 'test.1.cooper-jacob.transmissivity').value ?? 0) * day).toBeCloseTo(10, 3);
    expect(figureIn(record, 'test.1.cooper-jacob.slope').value).toBeCloseTo(slope, 5);
    expect(record.figures.some((figure) => figure.id.endsWith('storativity'))).toBe(false);
    expect(figureIn(record, 'test.1.cooper-jacob.transmissivity').caution).toContain('no storage coefficient');
  });

  test('specific capacity at the last reading', () => {
    expect(valueIn(pumped, 'test.1.specific-capacity')).toBeCloseTo(flow / drawdown(100), 8);
  });

  test('readings while casing storage rules are left out, or the figure says that they are in it', () => {
    const cased = `casing 0 - 60 steel 168.3 x 6.4\n${pumped}`;
    // 25 × 0.07775² m² / 10 m²/d = 1,306 s, about 22 min (Papadopulos and Cooper, from memory): two readings are later.
    expect(valueIn(cased, 'test.1.casing-storage-end')).toBeCloseTo((25 * 0.07775 ** 2) / (10 / day), 0);
    expect(figureIn(recordOf(cased), 'test.1.cooper-jacob.transmissivity').caution).toContain('while the casing');
  });

  test('recovery by the residual drawdown', () => {
    const residual = [1, 4, 10, 30].map((m) => `${m} ${(5 + slope * Math.log10((100 + m) / m)).toFixed(6)}`);
    const value = valueIn(`${pumped}recovery\n${residual.join('\n')}`, 'test.1.recovery.transmissivity');
    expect((value ?? 0) * day).toBeCloseTo(10, 3);
  });

  test('without a level at rest the drawdown is waited for', () => {
    expect(figureIn(recordOf('test pump 40 L/min\n1 6\n5 7'), 'test.1.specific-capacity')).toMatchObject({
      value: null,
      waitsFor: ['the level at rest'],
    });
  });

  test('steps whose levels settle give back their losses', () => {
    // s = B Q + C Q² with B 2,000 s/m² and C 1e6 s²/m⁵, each step level from its first reading on.
    const settled = (rate: number): number => 2000 * (rate / 60_000) + 1e6 * (rate / 60_000) ** 2;
    const step = (rate: number, from: number): string =>
      [1, 10, 20, 30].map((m) => `${from + m} ${(5 + settled(rate)).toFixed(9)}`).join('\n');
    const text = `test pump 30 L/min\n0 5\n${step(30, 0)}\nrate 60 L/min\n${step(60, 30)}\nrate 90 L/min\n${step(90, 60)}`;
    expect(valueIn(text, 'test.1.step.linear-loss')).toBeCloseTo(2000, 0);
    expect((valueIn(text, 'test.1.step.square-loss') ?? 0) / 1e6).toBeCloseTo(1, 3);
    expect(valueIn(text, 'test.1.step.3.drawdown')).toBeCloseTo(settled(90), 6);
    expect(valueIn(text, 'test.1.step.2.linear-share')).toBeCloseTo(2 / settled(60), 3);
  });
});
