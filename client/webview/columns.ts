import { keep, kept } from './editor.ts';
import type { ShownColumn } from './messages.ts';
import { columnList } from './page-parts.ts';

function choiceOf({ id, title, shown }: ShownColumn): HTMLLabelElement {
  const choice = document.createElement('label');
  const box = document.createElement('input');
  box.type = 'checkbox';
  box.name = id;
  box.checked = shown;
  choice.append(box, document.createTextNode(title));
  return choice;
}

const boxes = (): HTMLInputElement[] => [...columnList.querySelectorAll('input')];

const isSameList = (columns: readonly ShownColumn[]): boolean =>
  boxes()
    .map(({ name }) => name)
    .join() === columns.map(({ id }) => id).join();

/** Offers the columns of the drawing; leaves the boxes alone where they are the right ones, so that the focus stays. */
export function offerColumns(columns: readonly ShownColumn[]): void {
  if (!isSameList(columns)) columnList.replaceChildren(...columns.map(choiceOf));
}

/** Calls back when the reader has switched a column on or off. */
export function onColumnsChosen(tellWishes: () => void): void {
  columnList.addEventListener('change', () => {
    const listed = boxes().map(({ name }) => name);
    const unknown = kept().hidden.filter((id) => !listed.includes(id));
    keep({
      hidden: [
        ...unknown,
        ...boxes()
          .filter(({ checked }) => !checked)
          .map(({ name }) => name),
      ],
    });
    tellWishes();
  });
}
