/** The standing parts of the page, as the extension set them up. */

const byId = (id: string): HTMLElement => document.getElementById(id) ?? document.body;

export const body = byId('body');
export const trouble = byId('trouble');
export const announcement = byId('announcement');
export const toolbar = byId('toolbar');
export const tooltip = byId('tooltip');
export const columnList = byId('column-list');

/** A word or a sentence in the reader's language, with its placeholder filled. */
export const words = (name: string, value: string | number = ''): string =>
  (document.body.dataset[name] ?? '').replace('{0}', String(value));

/** Does something when the button is pressed. */
export const onPress = (id: string, action: () => void): void => byId(id).addEventListener('click', action);

export const setPressed = (id: string, pressed: boolean): void =>
  byId(id).setAttribute('aria-pressed', String(pressed));

export const setText = (id: string, text: string): void => {
  if (byId(id).textContent !== text) byId(id).textContent = text;
};
