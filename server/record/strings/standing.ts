import type { PipeString } from '../../model/log.ts';

const walls = new Set(['concrete', 'brick', 'stone', 'clay-tile', 'wood']);

/** Linings of dug and bored wells, which let water in between their pieces. */
export const isLining = ({ material }: PipeString): boolean => material !== null && walls.has(material.id);

/** A string that stays in the well. */
export const isPermanent = ({ temporary, pulled, states }: PipeString): boolean =>
  !temporary && pulled === null && states.every(({ id }) => id !== 'pulled');
