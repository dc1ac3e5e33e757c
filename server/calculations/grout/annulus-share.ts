import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'placed volume that is in the annulus',
  text: 'Va = Vp - Vi - Vb - Vr; Vp placed, Vi left inside the string, Vb in the hole below the shoe, Vr returned at surface, m³',
  source: 'balance of volumes',
  range: 'the three parts together not more than what was placed',
  caution: null,
};

/**
 * The part of a placed volume that can stand in the annulus: what was placed, less the plug left inside, the hole below
 * the shoe, and what came back at surface. All in m³. Refused where the parts are more than the whole.
 * Source: balance of volumes. Worked example: 0.42 placed, 0.0275 inside, 0.060 returned: 0.3325 m³.
 */
export function annulusShare(placed: number, inside: number, belowShoe: number, returned: number): Outcome {
  const share = placed - inside - belowShoe - returned;
  return share >= 0 ? known(share) : refused('more was left inside, below the shoe or returned than was placed');
}
