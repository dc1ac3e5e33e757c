import type { FromPage, KeptState } from './messages.ts';

interface EditorApi {
  postMessage(message: FromPage): void;
  getState(): Partial<KeptState> | undefined;
  setState(state: KeptState): void;
}

declare function acquireVsCodeApi(): EditorApi;

const api = acquireVsCodeApi();

export const tell = (message: FromPage): void => api.postMessage(message);

const isTexts = (value: unknown): value is string[] =>
  Array.isArray(value) && value.every((each) => typeof each === 'string');

const numberOr = (value: unknown, otherwise: number): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : otherwise;

function restored(): KeptState {
  const kept = api.getState() ?? {};
  return {
    uri: document.body.dataset.uri ?? '',
    scrollTop: numberOr(kept.scrollTop, 0),
    drawingLeft: numberOr(kept.drawingLeft, 0),
    zoom: numberOr(kept.zoom, 1),
    hidden: isTexts(kept.hidden) ? kept.hidden : [],
    tied: typeof kept.tied === 'boolean' ? kept.tied : null,
  };
}

let state = restored();

/** What the page keeps over a reload. */
export const kept = (): KeptState => state;

export function keep(changed: Partial<KeptState>): void {
  state = { ...state, ...changed };
  api.setState(state);
}
