import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'end of casing storage',
  text: 'tc = 25 (rc² - rp²) / T; rc inside radius of the casing, rp outside radius of the pump pipe, m; T transmissivity, m²/s; tc s',
  source: 'Papadopulos and Cooper 1967, from memory',
  range: 'rc greater than rp, T above 0',
  caution: 'T is what the test is to find: check the time again with the T of the window.',
};

/**
 * Time after which water stored in the casing no longer rules the drawdown of a pumped well, s.
 *
 * tc = 25 (rc² − rp²) / T, radii in m, T in m²/s. Source: Papadopulos and Cooper 1967, from memory.
 * Worked example: 76 mm casing radius, 16 mm pipe radius, T 10 m²/d: 1,192 s, about 20 min.
 */
export function casingStorageTime(casingRadius: number, pipeRadius: number, transmissivity: number): Outcome {
  if (!(pipeRadius >= 0 && casingRadius > pipeRadius)) return refused('the pump pipe does not fit into the casing');
  if (!(transmissivity > 0)) return refused('the transmissivity is not above zero');
  return known((25 * (casingRadius ** 2 - pipeRadius ** 2)) / transmissivity);
}
